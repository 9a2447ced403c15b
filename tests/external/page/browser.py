"""A headless Chromium driven by its DevTools protocol, with nothing but Python's standard library."""

import base64
import json
import os
import pathlib
import re
import shutil
import socket
import struct
import subprocess
import tempfile
import time
import urllib.request
import zlib

NAMES = ("chromium-headless-shell", "chromium", "chromium-browser", "google-chrome")


def program():
    return next((path for path in map(shutil.which, NAMES) if path), None)


class WebSocket:
    """RFC 6455, as much as is needed: text both ways, one peer, no extensions."""

    def __init__(self, port, path):
        self.socket = socket.create_connection(("127.0.0.1", port), timeout=120)
        key = base64.b64encode(os.urandom(16)).decode()
        self.socket.sendall((f"GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nUpgrade: websocket\r\nConnection: Upgrade\r\n"
                             f"Sec-WebSocket-Key: {key}\r\nSec-WebSocket-Version: 13\r\n\r\n").encode())
        self.held = b""
        while b"\r\n\r\n" not in self.held:
            self.held += self.socket.recv(65536)
        head, self.held = self.held.split(b"\r\n\r\n", 1)
        assert b" 101 " in head.split(b"\r\n")[0], head

    def send(self, text):
        body, mask = text.encode(), os.urandom(4)
        length = struct.pack("!BBH", 0x81, 0xFE, len(body)) if len(body) < 65536 else struct.pack("!BBQ", 0x81, 0xFF, len(body))
        if len(body) < 126:
            length = struct.pack("!BB", 0x81, 0x80 | len(body))
        self.socket.sendall(length + mask + bytes(b ^ mask[i % 4] for i, b in enumerate(body)))

    def take(self, count):
        while len(self.held) < count:
            more = self.socket.recv(1 << 20)
            if not more:
                raise ConnectionError("the browser is gone")
            self.held += more
        taken, self.held = self.held[:count], self.held[count:]
        return taken

    def receive(self):
        text = b""
        while True:
            first, second = self.take(2)
            length = second & 127
            if length == 126:
                length = struct.unpack("!H", self.take(2))[0]
            elif length == 127:
                length = struct.unpack("!Q", self.take(8))[0]
            body = self.take(length)
            if first & 15 in (0, 1):
                text += body
                if first & 128:
                    return text.decode()


class Browser:
    """One page of the size of a phone, by touch. What it asks the network for and what goes wrong in it is kept."""

    def __init__(self, width=390, height=844, dots=2, arguments=()):
        self.folder = tempfile.mkdtemp(prefix="roundlay-page-")
        self.process = subprocess.Popen(
            [program(), "--headless", "--no-sandbox", "--disable-gpu-sandbox", "--remote-debugging-port=0", f"--user-data-dir={self.folder}",
             "--no-first-run", "--hide-scrollbars", "--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream", *arguments, "about:blank"],
            stderr=subprocess.PIPE, stdout=subprocess.DEVNULL, text=True)
        port = self.port()
        with urllib.request.urlopen(f"http://127.0.0.1:{port}/json/list") as answer:
            page = next(one for one in json.load(answer) if one["type"] == "page")
        self.socket = WebSocket(port, "/" + page["webSocketDebuggerUrl"].split("/", 3)[3])
        self.number, self.requests, self.problems, self.loaded = 0, [], [], False
        for domain in ("Page", "Runtime", "Network", "Log", "DOM"):
            self.ask(domain + ".enable")
        self.size(width, height, dots)
        self.ask("Emulation.setTouchEmulationEnabled", enabled=True, maxTouchPoints=2)

    def port(self):
        for line in self.process.stderr:
            found = re.search(r"ws://127\.0\.0\.1:(\d+)/", line)
            if found:
                return int(found[1])
        raise RuntimeError("the browser did not start")

    def size(self, width, height, dots=2):
        self.width, self.height, self.dots = width, height, dots
        self.ask("Emulation.setDeviceMetricsOverride", width=width, height=height, deviceScaleFactor=dots, mobile=True)

    def scheme(self, name):
        self.ask("Emulation.setEmulatedMedia", features=[{"name": "prefers-color-scheme", "value": name}])

    def ask(self, method, **parameters):
        return self.answer(self.begin(method, **parameters), method)

    def begin(self, method, **parameters):
        self.number += 1
        self.socket.send(json.dumps({"id": self.number, "method": method, "params": parameters}))
        return self.number

    def answer(self, number, method):
        while True:
            message = json.loads(self.socket.receive())
            if message.get("id") == number:
                if "error" in message:
                    raise RuntimeError(f"{method}: {message['error']}")
                return message["result"]
            self.note(message)

    def note(self, message):
        method, what = message.get("method"), message.get("params", {})
        if method == "Network.requestWillBeSent":
            self.requests.append(what["request"]["url"])
        elif method == "Runtime.exceptionThrown":
            self.problems.append(what["exceptionDetails"].get("exception", {}).get("description") or what["exceptionDetails"]["text"])
        elif method == "Log.entryAdded" and what["entry"]["level"] == "error":
            self.problems.append(what["entry"]["text"])
        elif method == "Page.loadEventFired":
            self.loaded = True

    def open(self, path, fragment="", before=""):
        if before:
            self.ask("Page.addScriptToEvaluateOnNewDocument", source=before)
        self.ask("Page.navigate", url="about:blank") # or only another fragment would be gone to
        self.run("0")
        self.requests.clear(), self.problems.clear()
        self.loaded = False
        begin = time.monotonic()
        self.ask("Page.navigate", url=pathlib.Path(path).resolve().as_uri() + fragment)
        while not self.loaded:
            self.note(json.loads(self.socket.receive()))
        self.settle()
        return time.monotonic() - begin

    def run(self, script):
        answer = self.ask("Runtime.evaluate", expression=script, awaitPromise=True, returnByValue=True)
        if "exceptionDetails" in answer:
            raise RuntimeError(answer["exceptionDetails"])
        return answer["result"].get("value")

    def settle(self):
        """Until two pictures of the screen have been drawn."""
        self.run("new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => requestAnimationFrame(done))))")

    def wait_for(self, condition, seconds=5):
        until = time.monotonic() + seconds
        while not self.run(condition):
            if time.monotonic() > until:
                raise TimeoutError(condition)
            time.sleep(0.02)

    def rest(self):
        """Until all dots are drawn again that were left out while fingers moved."""
        time.sleep(0.6)
        self.settle()

    def touch(self, kind, *points):
        self.ask("Input.dispatchTouchEvent", type=kind, touchPoints=[{"x": x, "y": y, "id": i} for i, (x, y) in enumerate(points)])

    def tap(self, x, y):
        """A short one, however slow this machine is: held for half a second it would be no tap."""
        method, now = "Input.dispatchTouchEvent", time.time()
        both = [self.begin(method, type="touchStart", touchPoints=[{"x": x, "y": y}], timestamp=now),
                self.begin(method, type="touchEnd", touchPoints=[], timestamp=now + 0.05)]
        for number in both:
            self.answer(number, method)
        self.settle()

    def drag(self, path):
        """`path`: of one finger or of several at once, a list of tuples of places."""
        self.touch("touchStart", *path[0])
        for points in path[1:]:
            self.touch("touchMove", *points)
        self.touch("touchEnd")
        self.settle()

    def box(self, selector):
        """Left, top, width and height of what is seen of it, or None."""
        return self.run(f"(() => {{ const e = document.querySelector({json.dumps(selector)}), b = e && e.getBoundingClientRect();"
                        " return b && b.width > 0 ? [b.left, b.top, b.width, b.height] : null; })()")

    def tap_on(self, selector):
        left, top, width, height = self.box(selector)
        self.tap(left + width / 2, top + height / 2)

    def tap_until(self, selector, condition):
        """A machine that is busy with others makes a long press of a tap now and then: as a person would, once more."""
        for _ in range(3):
            self.tap_on(selector)
            try:
                return self.wait_for(condition, 3)
            except TimeoutError:
                self.rest()
        raise TimeoutError(condition)

    def text(self, selector):
        return self.run(f"document.querySelector({json.dumps(selector)}).textContent")

    def is_seen(self, selector):
        return self.box(selector) is not None

    def write(self, words):
        self.ask("Input.insertText", text=words)
        self.settle()

    def picture(self, path=None, clip=None):
        """The screen, or a part of it: left, top, width and height, then a dot for each pixel of the page."""
        part = {"clip": dict(zip(("x", "y", "width", "height"), clip), scale=1 / self.dots)} if clip else {}
        png = base64.b64decode(self.ask("Page.captureScreenshot", format="png", **part)["data"])
        if path:
            pathlib.Path(path).write_bytes(png)
        return Picture(png)

    def close(self):
        self.process.terminate()
        self.process.wait(20)
        shutil.rmtree(self.folder, ignore_errors=True)


class Picture:
    """A PNG of 8 bits without interlace, as the browser writes them."""

    def __init__(self, png):
        at, packed = 8, b""
        while at < len(png):
            size, kind = struct.unpack("!I4s", png[at:at + 8])
            if kind == b"IHDR":
                self.width, self.height, depth, colour = struct.unpack("!IIBB", png[at + 8:at + 18])
                assert depth == 8 and colour in (2, 6)
                self.parts = 3 if colour == 2 else 4
            elif kind == b"IDAT":
                packed += png[at + 8:at + 8 + size]
            at += 12 + size
        self.rows = self.unfiltered(zlib.decompress(packed))

    def unfiltered(self, data):
        n, stride, rows, before = self.parts, self.width * self.parts, [], bytearray(self.width * self.parts)
        for y in range(self.height):
            kind, row = data[y * (stride + 1)], bytearray(data[y * (stride + 1) + 1:(y + 1) * (stride + 1)])
            for i in range(stride if kind else 0):
                left, up, corner = row[i - n] if i >= n else 0, before[i], before[i - n] if i >= n else 0
                row[i] = (row[i] + (left, up, (left + up) // 2, self.paeth(left, up, corner))[kind - 1]) & 255
            rows.append(row)
            before = row
        return rows

    @staticmethod
    def paeth(left, up, corner):
        guess = left + up - corner
        a, b, c = abs(guess - left), abs(guess - up), abs(guess - corner)
        return left if a <= b and a <= c else up if b <= c else corner

    def at(self, x, y):
        row = self.rows[min(self.height - 1, int(y))]
        return tuple(row[int(x) * self.parts:int(x) * self.parts + 3])
