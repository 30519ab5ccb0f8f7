"""Writes a trained network as the acoustic part of a Vosk model: am/final.mdl and the conf files.

Kaldi's binary format throughout. Batch normalisation stays a component of its own, since a bypass
runs around it.
"""

from __future__ import annotations

import math
import struct
from pathlib import Path

import numpy as np
import torch

from models.recipe.network import BYPASS, HEAD, LEFT, NECK, OUTPUTS, RIGHT, WIDTH
from reader.devices.vosk_graph import PHONES, POSITIONS, TRANSITIONS, phone_number
from reader.listening.packed_matrix import FINEST, HEADER, MARKS, TOKEN, placed

MFCC = "--use-energy=false\n--num-mel-bins=40\n--num-ceps=40\n--low-freq=20\n--high-freq=7600\n"
SETTINGS = """--min-active=200
--max-active=3000
--beam=13.0
--lattice-beam=1.0
--acoustic-scale=1.0
--frame-subsampling-factor=3
--endpoint.silence-phones=1
--endpoint.rule2.min-trailing-silence=0.4
--endpoint.rule3.min-trailing-silence=0.6
--endpoint.rule4.min-trailing-silence=1.0
"""


BLANK_SHIFT = 2.0
"""How much lower blank scores in the exported model: CTC says blank too often, and commands were
missed.

Chosen by hand; it trades misses for confusions, see the card.
"""


GRAIN = 1_024
"""Parts of one in which a packed matrix says its least value and its range."""


def i32(value: int) -> bytes:
    """A number."""
    return b"\x04" + struct.pack("<i", value)


def f32(value: float) -> bytes:
    """A real number."""
    return b"\x04" + struct.pack("<f", value)


def f64(value: float) -> bytes:
    """A real number of double length."""
    return b"\x08" + struct.pack("<d", value)


def integers(values: list[int]) -> bytes:
    """A vector of whole numbers."""
    return i32(len(values)) + struct.pack(f"<{len(values)}i", *values)


def vector(values: np.ndarray) -> bytes:
    """A vector."""
    return b"FV " + i32(len(values)) + np.asarray(values, np.float32).tobytes()


def matrix(values: np.ndarray) -> bytes:
    """A matrix in a byte for each number: reader.listening.packed_matrix, backwards.

    Least value and range are whole thousandths of two, so that what was read back is written the
    same again.
    """
    rows, columns = values.shape
    least = math.floor(float(values.min()) * GRAIN) / GRAIN
    reach = math.ceil(float(values.max()) * GRAIN) / GRAIN - least
    across = values.T.astype(np.float64)
    ranked = np.sort(across, 1)[:, [0, rows // 4, 3 * rows // 4, rows - 1]]
    marks = np.rint((ranked - least) / max(reach, 1 / GRAIN) * FINEST).astype("<u2")
    codes = np.rint(placed(across, MARKS, least + reach * (marks / FINEST))).astype(np.uint8)
    return TOKEN + HEADER.pack(least, reach, rows, columns) + marks.tobytes() + codes.tobytes()


def transition_model() -> bytes:
    """Topology, triples and probabilities: silence has one state on blank, a phone its sound and
    then blank.
    """
    phones = [1] + [phone_number(p, s) for p in range(len(PHONES)) for s in range(len(POSITIONS))]
    phones.sort()
    index = [-1] + [0 if phone == 1 else 1 for phone in phones]
    quiet = [(0, [(0, 0.5), (1, 0.5)]), (-1, [])]
    sound = [(0, [(0, 0.5), (1, 0.25), (2, 0.25)]), (1, [(1, 0.5), (2, 0.5)]), (-1, [])]
    out = b"<TransitionModel> <Topology> " + integers(phones) + integers(index) + i32(2)
    for entry in (quiet, sound):
        out += i32(len(entry))
        for pdf_class, arcs in entry:
            out += i32(pdf_class) + i32(len(arcs))
            out += b"".join(i32(end) + f32(share) for end, share in arcs)
    out += b"</Topology> "
    triples = [(1, 0, 0)]
    for phone in phones[1:]:
        triples += [(phone, 0, 1 + (phone - 2) // 4), (phone, 1, 0)]
    out += b"<Triples> " + i32(len(triples))
    out += b"".join(i32(a) + i32(b) + i32(c) for a, b, c in triples) + b"</Triples> "
    shares = [1.0, 0.5, 0.5] + [0.5, 0.25, 0.25, 0.5, 0.5] * (len(phones) - 1)
    assert len(shares) == TRANSITIONS + 1
    out += b"<LogProbs> " + vector(np.log(shares)) + b"</LogProbs> </TransitionModel> "
    return out


def spread(weight: torch.Tensor) -> np.ndarray:
    """A convolution's weight [out, in, taps] as the matrix over spliced input, tap by tap."""
    return weight.permute(0, 2, 1).reshape(weight.shape[0], -1).numpy()


class Body:
    """Config lines and components as they are added."""

    def __init__(self) -> None:
        self.lines = ["input-node name=input dim=40"]
        self.parts: list[tuple[str, bytes]] = []

    def add(self, name: str, source: str, part: bytes) -> str:
        """A component fed from a descriptor; gives its name."""
        self.lines.append(f"component-node name={name} component={name} input={source}")
        self.parts.append((name, part))
        return name

    def affine(self, name: str, source: str, conv: torch.nn.Conv1d | tuple) -> str:
        """An affine layer over spliced input."""
        weight, bias = conv
        part = b"<FixedAffineComponent> <LinearParams> " + matrix(spread(weight))
        return self.add(
            name,
            source,
            part + b"<BiasParams> " + vector(bias.numpy()) + b"</FixedAffineComponent> ",
        )

    def relu(self, name: str, source: str, width: int) -> str:
        """A rectifier."""
        return self.add(name, source, _stats(b"RectifiedLinearComponent", width))

    def norm(self, name: str, source: str, mean: torch.Tensor, var: torch.Tensor) -> str:
        """Batch normalisation in test mode."""
        part = b"<BatchNormComponent> <Dim> " + i32(len(mean)) + b"<BlockDim> " + i32(len(mean))
        part += b"<Epsilon> " + f32(1e-3) + b"<TargetRms> " + f32(1.0) + b"<TestMode> T"
        part += (
            b"<Count> "
            + f64(1e5)
            + b"<StatsMean> "
            + vector(mean.numpy())
            + b"<StatsVar> "
            + vector(var.numpy())
        )
        return self.add(name, source, part + b"</BatchNormComponent> ")


def _stats(kind: bytes, width: int) -> bytes:
    empty = i32(0)
    return (
        b"<" + kind + b"> <Dim> " + i32(width)
        + b"<ValueAvg> FV " + empty + b"<DerivAvg> FV " + empty
        + b"<Count> " + f64(0.0) + b"</" + kind + b"> "
    )  # fmt: skip


def network_body(state: dict[str, torch.Tensor]) -> Body:
    """The network's weights as Kaldi components."""
    state = dict(state)
    state["head2.bias"] = state["head2.bias"].clone()
    state["head2.bias"][0] -= BLANK_SHIFT
    body = Body()
    here = body.affine(
        "first",
        "Append(Offset(input, -1), input, Offset(input, 1))",
        (state["first.weight"], state["first.bias"]),
    )
    here = body.relu("first.relu", here, WIDTH)
    here = body.norm(
        "first.norm", here, state["first_norm.running_mean"], state["first_norm.running_var"]
    )
    for number, reach in enumerate((1, 1, 1, 0, 3, 3, 3, 3, 3)):
        layer, name = f"layers.{number}.", f"layer{number}"
        source = f"Append(Offset({here}, -{reach}), {here})" if reach else here
        neck = body.affine(
            f"{name}.linear", source, (state[layer + "linear.weight"], torch.zeros(NECK))
        )
        source = f"Append({neck}, Offset({neck}, {reach}))" if reach else neck
        wide = body.affine(
            f"{name}.affine", source, (state[layer + "affine.weight"], state[layer + "affine.bias"])
        )
        wide = body.relu(f"{name}.relu", wide, WIDTH)
        wide = body.norm(
            f"{name}.norm",
            wide,
            state[layer + "norm.running_mean"],
            state[layer + "norm.running_var"],
        )
        part = (
            b"<NoOpComponent> <Dim> "
            + i32(WIDTH)
            + b"<BackpropScale> "
            + f32(1.0)
            + b"</NoOpComponent> "
        )
        here = body.add(f"{name}.sum", f"Sum(Scale({BYPASS}, {here}), {wide})", part)
    back = "Append(Offset({0}, -6), Offset({0}, -3), {0})"
    here = body.affine("head1", back.format(here), (state["head1.weight"], state["head1.bias"]))
    here = body.relu("head1.relu", here, HEAD)
    here = body.norm(
        "head1.norm", here, state["head_norm.running_mean"], state["head_norm.running_var"]
    )
    here = body.affine("head2", back.format(here), (state["head2.weight"], state["head2.bias"]))
    here = body.add("scores", here, _stats(b"LogSoftmaxComponent", OUTPUTS))
    body.lines.append(f"output-node name=output input={here} objective=linear")
    return body


def write_acoustics(folder: Path, state: dict[str, torch.Tensor]) -> None:
    """Writes am/final.mdl, conf/mfcc.conf and conf/model.conf."""
    body = network_body(state)
    out = b"\0B" + transition_model() + b"<Nnet3> \n" + "\n".join(body.lines).encode() + b"\n\n"
    out += b"<NumComponents> " + i32(len(body.parts))
    for name, part in body.parts:
        out += b"<ComponentName> " + name.encode() + b" " + part
    out += b"</Nnet3> <LeftContext> " + i32(LEFT) + b"<RightContext> " + i32(RIGHT)
    out += b"<Priors> " + vector(np.zeros(0))
    for name in ("am", "conf"):
        (folder / name).mkdir(parents=True, exist_ok=True)
    (folder / "am" / "final.mdl").write_bytes(out)
    (folder / "conf" / "mfcc.conf").write_text(MFCC, encoding="utf-8")
    (folder / "conf" / "model.conf").write_text(SETTINGS, encoding="utf-8")
