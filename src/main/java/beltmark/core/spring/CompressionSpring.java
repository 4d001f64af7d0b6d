package beltmark.core.spring;

import beltmark.core.units.Length;

/** Stub. */
public record CompressionSpring(Length wire, Length meanCoil, double activeCoils, Length freeLength) {}
