"""Reads an exchange structure as ISO 10303-21:2002 defines it, and nothing more lenient.

Written from the standard's grammar (clause 6 and table 1 to 3, strings clause 6.3.3); shares no code with the
program under test.
"""
import re


class Fault(Exception):
    """One thing wrong with a file. `rule` is a short fixed word, the text says where."""

    def __init__(self, rule, text):
        super().__init__(f"{rule}: {text}")
        self.rule = rule


class Ref(int):
    """#n"""


class Enumeration(str):
    """.WORD."""


class Text(str):
    """A string, decoded."""


class Typed:
    """KEYWORD(value), as the value of a select type."""

    def __init__(self, type_, value):
        self.type = type_
        self.value = value


UNSET = object()
DERIVED = object()

TOKEN = re.compile(
    r"(?P<blank>[ \n]+|/\*.*?\*/)"
    r"|(?P<ref>#[0-9]+)"
    r"|(?P<real>[+-]?[0-9]+\.[0-9]*(E[+-]?[0-9]+)?)"
    r"|(?P<integer>[+-]?[0-9]+(?![0-9.]))"
    r"|(?P<text>'(?:[^']|'')*')"
    r"|(?P<enumeration>\.[A-Z_][A-Z0-9_]*\.)"
    r"|(?P<word>!?[A-Z_][A-Z0-9_\-]*)"
    r"|(?P<mark>[()=,;$*])",
    re.DOTALL,
)


def decode(quoted):
    """The characters of a string token; refuses what the encoding does not allow."""
    body = quoted[1:-1].replace("''", "'")
    out = []
    i = 0
    while i < len(body):
        c = body[i]
        if c != "\\":
            out.append(c)
            i += 1
        elif body.startswith("\\\\", i):
            out.append("\\")
            i += 2
        elif body.startswith("\\X2\\", i) or body.startswith("\\X4\\", i):
            width = 4 if body[i + 2] == "2" else 8
            end = body.find("\\X0\\", i)
            digits = body[i + 4 : end]
            if end < 0 or not digits or len(digits) % width or not re.fullmatch("[0-9A-F]+", digits):
                raise Fault("string", f"bad directive in {quoted}")
            codes = [int(digits[k : k + width], 16) for k in range(0, len(digits), width)]
            out.extend(chr(code) for code in codes)
            i = end + 4
        else:
            raise Fault("string", f"bad directive in {quoted}")
    return Text("".join(out))


def tokens(text):
    """The tokens of the text as (kind, value)."""
    place = 0
    while place < len(text):
        match = TOKEN.match(text, place)
        if not match:
            raise Fault("syntax", f"unreadable at {text[place:place + 30]!r}")
        place = match.end()
        kind = match.lastgroup
        if kind != "blank":
            yield kind, match.group()


class Parser:
    """One token of look-ahead over the whole text."""

    def __init__(self, text):
        self.tokens = tokens(text)
        self.kind, self.value = "mark", ""
        self.step()

    def step(self):
        taken = self.value
        self.kind, self.value = next(self.tokens, ("end", ""))
        return taken

    def expect(self, value):
        if self.value != value:
            raise Fault("syntax", f"{value!r} expected, found {self.value!r}")
        return self.step()

    def parameter(self):
        kind, value = self.kind, self.value
        if value == "(":
            return self.list()
        self.step()
        if kind == "ref":
            return Ref(value[1:])
        if kind == "real":
            return float(value)
        if kind == "integer":
            return int(value)
        if kind == "text":
            return decode(value)
        if kind == "enumeration":
            return Enumeration(value[1:-1])
        if value == "$":
            return UNSET
        if value == "*":
            return DERIVED
        if kind == "word":
            inner = self.list()
            if len(inner) != 1:
                raise Fault("syntax", f"{value} takes one value")
            return Typed(value, inner[0])
        raise Fault("syntax", f"a value expected, found {value!r}")

    def list(self):
        self.expect("(")
        values = []
        while self.value != ")":
            if values:
                self.expect(",")
            values.append(self.parameter())
        self.expect(")")
        return values

    def record(self):
        if self.kind != "word":
            raise Fault("syntax", f"an entity name expected, found {self.value!r}")
        return self.step(), self.list()

    def instance(self):
        """(id, {entity: attributes}); a simple instance has one entity."""
        if self.kind != "ref":
            raise Fault("syntax", f"an instance expected, found {self.value!r}")
        id_ = int(self.step()[1:])
        self.expect("=")
        parts = []
        if self.value == "(":
            self.step()
            while self.value != ")":
                parts.append(self.record())
            self.step()
            names = [name for name, _ in parts]
            if len(parts) < 2 or names != sorted(names):
                raise Fault("syntax", f"#{id_}: the parts of a complex instance stand in alphabetic order")
        else:
            parts.append(self.record())
        self.expect(";")
        return id_, dict(parts)


class File:
    """`header`: {entity: attributes}, `data`: {id: {entity: attributes}}."""

    def __init__(self, raw):
        for place, byte in enumerate(raw):
            if byte != 0x0A and not 0x20 <= byte <= 0x7E:
                raise Fault("ascii", f"byte {byte:#04x} at {place}")
        parser = Parser(raw.decode("ascii"))
        for word in ("ISO-10303-21", ";", "HEADER", ";"):
            parser.expect(word)
        self.header = {}
        while parser.value != "ENDSEC":
            name, attributes = parser.record()
            self.header[name] = attributes
            parser.expect(";")
        for word in ("ENDSEC", ";", "DATA", ";"):
            parser.expect(word)
        self.data = {}
        while parser.value != "ENDSEC":
            id_, parts = parser.instance()
            if id_ in self.data:
                raise Fault("duplicate", f"#{id_} is given twice")
            self.data[id_] = parts
        for word in ("ENDSEC", ";", "END-ISO-10303-21", ";"):
            parser.expect(word)
        if parser.kind != "end":
            raise Fault("syntax", "something stands behind the end")

    def of(self, *types):
        """(id, attributes) of all instances of these entities."""
        for id_, parts in self.data.items():
            for type_ in types:
                if type_ in parts:
                    yield id_, parts[type_]

    def get(self, ref, *types):
        """The attributes of one instance that must be of one of these entities."""
        parts = self.data[ref]
        for type_ in types:
            if type_ in parts:
                return parts[type_]
        raise Fault("type", f"#{ref} is {'/'.join(parts)}, expected {'/'.join(types)}")


def references(value):
    """Every Ref in a parameter."""
    if isinstance(value, Ref):
        yield value
    elif isinstance(value, Typed):
        yield from references(value.value)
    elif isinstance(value, list):
        for each in value:
            yield from references(each)
