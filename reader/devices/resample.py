"""Resample: sound at any rate in, sound at 16 kHz out (pure)."""

from __future__ import annotations

from math import gcd

import numpy as np

from reader.devices.ports import RATE_HZ, Samples


def at_our_rate(samples: Samples, rate_hz: int) -> Samples:
    """int16[m] at 16 kHz from int16[n] at rate_hz; nothing above 8 kHz is left to fold back.

    The whole text is filtered at once in the spectrum, so there is neither ripple nor delay.
    """
    if rate_hz == RATE_HZ or len(samples) == 0:
        return samples.astype(np.int16)
    shared = gcd(rate_hz, RATE_HZ)
    take, give = rate_hz // shared, RATE_HZ // shared
    # Silence at the end makes the length a multiple of the ratio, and a product of small primes.
    blocks = _smooth(-(-len(samples) // take) + 1)
    padded = np.zeros(blocks * take)
    padded[: len(samples)] = samples
    spectrum = np.fft.rfft(padded)
    out_length = blocks * give
    kept = np.zeros(out_length // 2 + 1, complex)
    shorter = min(len(kept), len(spectrum))
    kept[:shorter] = spectrum[:shorter]
    sound = np.fft.irfft(kept, out_length) * (out_length / len(padded))
    wanted = -(-len(samples) * give // take)
    return np.clip(np.rint(sound[:wanted]), -32768, 32767).astype(np.int16)


def _smooth(least: int) -> int:
    """The smallest number from `least` on whose only prime factors are 2, 3 and 5:
    fast transforms.
    """
    number = least
    while True:
        rest = number
        for prime in (2, 3, 5):
            while rest % prime == 0:
                rest //= prime
        if rest == 1:
            return number
        number += 1
