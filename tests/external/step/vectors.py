"""Triples of numbers as vectors."""
from math import sqrt


def dot(a, b):
    return sum(x * y for x, y in zip(a, b))


def cross(a, b):
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])


def minus(a, b):
    return tuple(x - y for x, y in zip(a, b))


def plus(a, b):
    return tuple(x + y for x, y in zip(a, b))


def times(k, a):
    return tuple(k * x for x in a)


def length(a):
    return sqrt(dot(a, a))


def unit(a):
    return times(dot(a, a) ** -0.5, a)
