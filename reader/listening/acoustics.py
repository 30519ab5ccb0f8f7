"""The listening model's network, read from its file's bytes and worked out in numpy; pure.

The file is Kaldi's binary nnet3: config lines that say what each node is fed from, then components
with their matrices. Only what our own export writes is known; any other model gives ValueError.
"""

from __future__ import annotations

import re
import struct
from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from reader.listening.packed_matrix import unpacked

Floats = NDArray[np.float32]
Times = NDArray[np.int64]
Fetch = Callable[[str, Times], Floats]

EVERY = 3
"""The network gives one output for so many frames."""
EPSILON = 1e-3
"""Added to a variance before its root, as in training."""
_TERM = re.compile(r"[A-Za-z_0-9.]+\(|[A-Za-z_][\w.]*|-?[\d.]+|\)")


@dataclass(frozen=True, slots=True)
class Source:
    """What a node is fed from: a name, or an operation over sources.

    number: frames of an Offset, factor of a Scale.
    """

    kind: str
    of: tuple[Source, ...] = ()
    number: float = 0.0


class Network:
    """The nodes of a network, in the order in which they are worked out."""

    def __init__(self, sources: dict[str, Source], parts: dict[str, Callable[[Floats], Floats]]):
        self._sources, self._parts = sources, parts

    def outputs(self, nodes: tuple[str, ...], frames: Floats) -> tuple[Floats, ...]:
        """What these nodes give for every third frame: [ceil(frames / 3), width] each.

        frames: [n, 40], n at least 1; before the first and behind the last they are repeated.
        """
        times: Times = np.arange(0, len(frames), EVERY)
        asked: dict[str, list[Times]] = {node: [times] for node in nodes}
        moments: dict[str, Times] = {}
        for name in reversed(self._sources):
            if name in asked:
                moments[name] = np.unique(np.concatenate(asked[name]))
                _ask(self._sources[name], moments[name], asked)
        known: dict[str, Floats] = {}

        def fetch(name: str, at: Times) -> Floats:
            if name == "input":
                return frames[np.clip(at, 0, len(frames) - 1)]
            return known[name][np.searchsorted(moments[name], at)]

        for name, source in self._sources.items():
            if name in moments:
                known[name] = self._parts[name](_gather(source, moments[name], fetch))
        return tuple(fetch(node, times) for node in nodes)

    def names(self) -> tuple[str, ...]:
        """Every node."""
        return tuple(self._sources)


def _ask(source: Source, times: Times, asked: dict[str, list[Times]]) -> None:
    """Notes the moments at which the nodes that feed this one are needed."""
    if source.kind == "Offset":
        return _ask(source.of[0], times + int(source.number), asked)
    if not source.of and source.kind != "input":
        asked.setdefault(source.kind, []).append(times)
    for one in source.of:
        _ask(one, times, asked)
    return None


def _gather(source: Source, times: Times, fetch: Fetch) -> Floats:
    if not source.of:
        return fetch(source.kind, times)
    if source.kind == "Offset":
        return _gather(source.of[0], times + int(source.number), fetch)
    each = [_gather(one, times, fetch) for one in source.of]
    if source.kind == "Append":
        return np.concatenate(each, 1)
    if source.kind == "Scale":
        return np.float32(source.number) * each[0]
    return np.asarray(sum(each[1:], each[0]))


def read_network(content: bytes) -> Network:
    """The network in the bytes of a final.mdl; ValueError where it is of another kind."""
    head, _, rest = content.partition(b"<Nnet3> \n")
    lines, found, _ = rest.partition(b"<NumComponents>")
    if not found:
        raise ValueError("no network in the file")
    parts = _components(content, len(head) + len(b"<Nnet3> \n") + len(lines))
    sources: dict[str, Source] = {}
    made: dict[str, Callable[[Floats], Floats]] = {}
    for line in lines.decode("ascii").splitlines():
        words = re.fullmatch(r"component-node name=(\S+) component=(\S+) input=(.+)", line.strip())
        if words:
            name, part, fed = words.groups()
            sources[name], made[name] = _source(fed), parts[part]
        elif line.startswith("input-node") and "name=input " not in line:
            raise ValueError(f"another input: {line}")
    return Network(sources, made)


def _source(text: str) -> Source:
    terms = _TERM.findall(text)
    source, rest = _term(terms)
    if rest:
        raise ValueError(f"cannot be read: {text}")
    return source


def _term(terms: Sequence[str]) -> tuple[Source, Sequence[str]]:
    first, rest = terms[0], terms[1:]
    if not first.endswith("("):
        return Source(first), rest
    kind, number = first[:-1], 0.0
    if kind not in ("Append", "Offset", "Scale", "Sum"):
        raise ValueError(f"unknown operation {kind}")
    inside: list[Source] = []
    while rest[0] != ")":
        if re.fullmatch(r"-?[\d.]+", rest[0]):
            number, rest = float(rest[0]), rest[1:]
        else:
            one, rest = _term(rest)
            inside.append(one)
    return Source(kind, tuple(inside), number), rest[1:]


def _components(content: bytes, at: int) -> dict[str, Callable[[Floats], Floats]]:
    source = _Bytes(content, at)
    source.token()
    parts = {}
    for _ in range(int(source.number())):
        source.token()
        name, kind = source.token(), source.token().strip("<>")
        fields: dict[str, Floats | float] = {}
        while (token := source.token()) != f"</{kind}>":
            fields[token] = source.value()
        parts[name] = _part(kind, fields)
    return parts


def _part(kind: str, fields: dict[str, Floats | float]) -> Callable[[Floats], Floats]:
    if kind == "FixedAffineComponent":
        matrix, bias = np.asarray(fields["<LinearParams>"]).T.copy(), fields["<BiasParams>"]
        return lambda x: np.asarray(x @ matrix + bias)
    if kind == "BatchNormComponent":
        scale = 1 / np.sqrt(np.asarray(fields["<StatsVar>"]) + np.float32(EPSILON))
        shift = -np.asarray(fields["<StatsMean>"]) * scale
        return lambda x: np.asarray(x * scale + shift)
    if kind == "RectifiedLinearComponent":
        return lambda x: np.maximum(x, np.float32(0))
    if kind == "LogSoftmaxComponent":
        return _log_softmax
    if kind == "NoOpComponent":
        return lambda x: x
    raise ValueError(f"unknown component {kind}")


def _log_softmax(x: Floats) -> Floats:
    x = x - x.max(1, keepdims=True)
    return np.asarray(x - np.log(np.exp(x).sum(1, keepdims=True)))


class _Bytes:
    """Kaldi's binary values, one after another."""

    def __init__(self, content: bytes, at: int) -> None:
        self._content, self._at = content, at

    def token(self) -> str:
        end = self._content.index(b" ", self._at)
        token, self._at = self._content[self._at : end].decode("ascii"), end + 1
        return token

    def number(self) -> int:
        (value,) = struct.unpack_from("<i", self._content, self._at + 1)
        self._at += 5
        return int(value)

    def value(self) -> Floats | float:
        start = self._content[self._at : self._at + 2]
        if start == b"CM":
            packed, self._at = unpacked(self._content, self._at)
            return packed
        if start in (b"FM", b"FV"):
            return self._array()
        if start[:1] in (b"T", b"F"):
            self._at += 1
            return float(start[:1] == b"T")
        long = start[:1] == b"\x08"
        (value,) = struct.unpack_from("<d" if long else "<f", self._content, self._at + 1)
        self._at += 9 if long else 5
        return float(value)

    def _array(self) -> Floats:
        matrix = self.token() == "FM"
        rows = self.number()
        shape = (rows, self.number()) if matrix else (rows,)
        array = np.frombuffer(self._content, np.float32, int(np.prod(shape)), self._at)
        self._at += array.nbytes
        return array.reshape(shape)
