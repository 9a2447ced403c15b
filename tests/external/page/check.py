#!/usr/bin/env python3
"""check.py PROGRAM MODELS WORK: exports yard pages with PROGRAM (roundlay) into WORK and uses them in a headless Chromium as a
person with a phone does, by touch. MODELS holds the demo documents. Prints what fails; exits 1."""

import json
import os
import pathlib
import re
import subprocess
import sys
import time

import browser
import houses

PROGRAM, MODELS, WORK = sys.argv[1], pathlib.Path(sys.argv[2]), pathlib.Path(sys.argv[3])
PHONE = (390, 844)
wrong = []


def check(holds, *what):
    if not holds:
        wrong.append(" ".join(map(str, what)))
        print("WRONG:", wrong[-1], flush=True)


def export(document, name, language="en", only="page"):
    subprocess.run([PROGRAM, "export", document, "--to", WORK / name, "--only", only, "--force"], check=True, stderr=subprocess.DEVNULL,
                   stdout=subprocess.DEVNULL, env={**os.environ, "LANGUAGE": language, "LC_ALL": f"{language}.UTF-8"})
    return WORK / name / "yard.html"


def written(name, text):
    (WORK / f"{name}.roundlay").write_text(text, encoding="utf-8")
    return WORK / f"{name}.roundlay"


def said(page):
    return json.loads(re.search(r'id="words">(.*?)</script>', page.read_text(encoding="utf-8"), re.DOTALL)[1])


def rgb(text):
    return [int(part) for part in re.findall(r"\d+", text)[:3]]


def brightness(colour):
    parts = [c / 255 / 12.92 if c <= 0.04045 * 255 else ((c / 255 + 0.055) / 1.055) ** 2.4 for c in colour]
    return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2]


def contrast(a, b):
    low, high = sorted((brightness(a), brightness(b)))
    return (high + 0.05) / (low + 0.05)


def middle_of(phone, selector="#shell"):
    left, top, width, height = phone.box(selector)
    return left + width / 2, top + height / 2


def dots(phone, x, y, around=1):
    """What is seen there, and so many dots to each side: where two things meet, either may be."""
    wide = 2 * around + 1
    picture = phone.picture(clip=(x - around, y - around, wide, wide))
    return [picture.at(i, j) for i in range(wide) for j in range(wide)]


def is_marked(colour):
    """The colour of a chosen log, in whatever light: blue."""
    return colour[2] > colour[0] + 12 and colour[2] > 1.2 * colour[0]


def nothing_from_outside(phone, page, what):
    check(phone.requests == [page.resolve().as_uri()], what, "asks for", phone.requests)
    check(not phone.problems, what, "has problems:", phone.problems)


def choose_by_search(phone, tag):
    phone.tap_until("#find", "document.activeElement.id === 'find'")
    phone.run("document.querySelector('#find').value = ''")
    phone.write(tag)
    check(phone.is_seen("#list"), "no list of what was searched for:", tag)
    for kind in ("keyDown", "keyUp"):
        phone.ask("Input.dispatchKeyEvent", type=kind, key="Enter", code="Enter", windowsVirtualKeyCode=13, text="\r" if kind == "keyDown" else "")
    phone.settle()


def hidden(phone, selector):
    return not phone.is_seen(selector)


# --- what is checked ---

def a_tap_marks_what_is_under_it(phone, what, around=1):
    """The log that is found by a ray is drawn in another way: where it was tapped it is marked."""
    phone.tap_on("#whole")
    left, top, width, height = phone.box("#shell")
    hit = missed = 0
    for i in range(6):
        for j in range(4):
            x, y = left + width * (0.1 + 0.8 * i / 5), top + height * (0.33 + 0.3 * j / 3)
            before = dots(phone, x, y, around)
            phone.tap(x, y)
            if hidden(phone, "#log"):
                missed += 1
                check(any(max(one) - min(one) < 12 for one in before), what, "wood at", x, y, "is not found:", before)
                continue
            hit += 1
            check(phone.text("#tag") != "", what, "a log without a tag")
            # The panel has taken room: the shell is drawn smaller, and the tapped place is another one. Closed, it is as before, marked no more.
            phone.run("document.querySelector('#log').style.visibility = 'hidden'; document.querySelector('#log').style.position = 'absolute'")
            phone.settle()
            check(any(map(is_marked, dots(phone, x, y, around))), what, phone.text("#tag"), "tapped at", x, y, "is not marked:", dots(phone, x, y))
            phone.run("document.querySelector('#log').style.visibility = ''; document.querySelector('#log').style.position = ''")
            phone.settle()
            phone.tap_on("#close_log")
            check(not any(map(is_marked, dots(phone, x, y))), what, "what was put away is still marked")
    check(hit >= 5 and missed >= 3, what, "taps hit", hit, "and missed", missed)


def fingers_turn_and_come_nearer(phone):
    phone.tap_on("#whole")
    x, y = middle_of(phone)
    stage = (x - 100, y - 100, 200, 200)
    before = phone.picture(clip=stage).rows
    phone.drag([[(x, y)]] + [[(x + 8 * i, y)] for i in range(1, 9)])
    phone.rest()
    turned = phone.picture(clip=stage).rows
    check(turned != before, "one finger does not turn the shell")
    check(hidden(phone, "#log"), "turning chooses a log")
    phone.drag([[(x - 20, y), (x + 20, y)]] + [[(x - 20 - 10 * i, y), (x + 20 + 10 * i, y)] for i in range(1, 8)])
    phone.rest()
    check(phone.picture(clip=stage).rows != turned, "two fingers do not come nearer")
    check(hidden(phone, "#log"), "coming nearer chooses a log")
    phone.tap_on("#whole")
    check(phone.picture(clip=stage).rows == before, "the whole shell is not seen as at first")


def a_search_finds(phone, page):
    words = said(page)
    for log in words["logs"][3], words["logs"][-1]:
        choose_by_search(phone, log["tag"].lower())
        check(phone.text("#tag") == log["tag"], "searched", log["tag"], "found", phone.text("#tag"))
        shown = phone.text("#lines")
        for name, line in log["lines"]:
            for text in [words["words"][line]] if isinstance(line, int) else line:
                check(text in shown, log["tag"], "does not say", text)
        check("no lift plan" in shown or "kg" not in shown, "a weight without its caution")
    choose_by_search(phone, "no such log")
    check("no such log" in phone.text("#found"), "nothing is said of what is not found")
    phone.tap_on("#close_list")


def neighbours_lead_on(phone, page):
    log = next(log for log in said(page)["logs"] if any(not isinstance(line, int) for _, line in log["lines"]))
    choose_by_search(phone, log["tag"])
    phone.run("document.querySelector('#lines .tag').scrollIntoView()")
    other = phone.text("#lines .tag")
    phone.tap_on("#lines .tag")
    check(phone.text("#tag") == other, "a neighbour does not lead on")
    phone.tap_on("#close_log")


def the_raise_is_stepped_through(phone, page):
    words = said(page)
    count = len(words["steps"])
    check(sorted(log for logs, _, _ in words["steps"] for log in logs) == list(range(len(words["logs"]))), "steps do not raise each log once")
    phone.tap_on("#whole")
    for back in range(1, 4):
        phone.tap_on("#back")
        tag = words["logs"][words["steps"][count - back - 1][0][0]]["tag"]
        check(f"{count - back}" in phone.text("#step") and tag in phone.text("#step"), "step", count - back, "says", phone.text("#step"))
    phone.tap_on("#next")
    check(words["logs"][words["steps"][count - 3][0][0]]["tag"] in phone.text("#step"), "next says", phone.text("#step"))
    check(words["caution"] == phone.text("#caution") and phone.is_seen("#caution"), "the raise has no caution")
    left, top, width, height = phone.box("#steps")
    phone.drag([[(left + width - 8, top + height / 2)]] + [[(left + width * part, top + height / 2)] for part in (0.8, 0.5, 0.2, 0.0, -0.1)])
    check(words["say"]["no_step"] == phone.text("#step"), "the slider does not go to nothing:", phone.text("#step"))
    left, top, width, height = phone.box("#stage")
    empty = phone.picture(clip=(left + 5, top + height / 4, width - 10, height / 2)).rows
    check(len({bytes(row[i:i + 3]) for row in empty[::7] for i in range(0, len(row), len(row) // int(width - 10))}) == 1, "wood where nothing is up")
    phone.tap_on("#next")
    chosen = words["logs"][words["steps"][0][0][0]]["tag"]
    check(chosen in phone.text("#step"), "the first step is not", chosen)
    phone.tap_on("#whole")


def a_sheet_is_shown(phone, page):
    log = said(page)["logs"][0]
    choose_by_search(phone, log["tag"])
    phone.tap_until("#sheet", "!document.querySelector('#paper').hidden")
    check(phone.is_seen("#frame svg"), "no sheet")
    check(log["tag"] in phone.text("#frame svg"), "the sheet does not name", log["tag"])
    x, y = middle_of(phone, "#frame")
    room = lambda: [float(part) for part in phone.run("document.querySelector('#frame svg').getAttribute('viewBox')").split()]
    whole = room()
    phone.drag([[(x - 20, y), (x + 20, y)]] + [[(x - 20 - 15 * i, y), (x + 20 + 15 * i, y)] for i in range(1, 9)])
    check(room()[2] < whole[2] / 3, "two fingers do not come nearer to the sheet:", whole, room())
    before = room()
    phone.drag([[(x, y)]] + [[(x - 10 * i, y)] for i in range(1, 9)])
    check(room()[0] > before[0] + 1, "a finger does not move the sheet")
    phone.rest()
    phone.tap_until("#close_paper", "document.querySelector('#paper').hidden")
    phone.tap_until("#close_log", "document.querySelector('#log').hidden")


def bright_and_dark_can_be_read(phone, page):
    tag = said(page)["logs"][0]["tag"]
    for scheme, is_right in (("light", lambda ground: brightness(ground) > 0.7), ("dark", lambda ground: brightness(ground) < 0.1)):
        phone.scheme(scheme)
        choose_by_search(phone, tag)
        phone.picture(WORK / f"{page.parent.name}-{scheme}.png")
        check(is_right(rgb(phone.run("getComputedStyle(document.body).backgroundColor"))), scheme, "is not")
        x, y, width, _ = phone.box("#stage")
        check(is_right(dots(phone, x + width - 6, y + 6)[4]), scheme, "is not behind the shell")
        for selector, behind in (("#tag", "#log"), ("dt", "#log"), ("dd", "#log"), ("#step", "footer"), ("#close_log", "#close_log"),
                                 ("#sheet", "#sheet"), ("#find", "#find"), ("#caution", "footer"), ("button.tag", "button.tag")):
            colours = phone.run(f"[getComputedStyle(document.querySelector('{selector}')).color, getComputedStyle(document.querySelector('{behind}')).backgroundColor]")
            check(contrast(*map(rgb, colours)) >= 4.5, scheme, selector, "has a contrast of", contrast(*map(rgb, colours)))
        phone.tap_until("#sheet", "!document.querySelector('#paper').hidden")
        phone.picture(WORK / f"{page.parent.name}-sheet-{scheme}.png")
        paper, ink = phone.run("[document.querySelector('#frame rect').getAttribute('fill'), document.querySelector('#frame text').getAttribute('fill')]")
        check(is_right(rgb(paper)) and contrast(rgb(paper), rgb(ink)) >= 7, scheme, "sheet is", paper, ink)
        phone.tap_until("#close_paper", "document.querySelector('#paper').hidden")
        phone.tap_until("#close_log", "document.querySelector('#log').hidden")
    phone.scheme("light")


def fingers_can_hit(phone, what):
    small = phone.run("[...document.querySelectorAll('button, input')].map((e) => [e.id || e.textContent, e.getBoundingClientRect()])"
                      ".filter(([, b]) => b.width > 1 && (b.width < 44 || b.height < 44)).map(([name]) => name)")
    check(small == [], what, "too small for a finger:", small)
    check(phone.run("document.documentElement.scrollWidth <= innerWidth"), what, "runs over the side of the screen")


def a_tag_is_scanned(page, codes):
    """Chromium reads codes on phones only: the test's own reader says what zbarimg has read from tags.pdf."""
    phone = browser.Browser(*PHONE)
    try:
        phone.open(page)
        if not phone.run("'BarcodeDetector' in window"):
            check(hidden(phone, "#scan"), "a button to scan where nothing can be scanned")
        words = said(page)
        for code, tag, warned in ((codes[2], codes[2].split()[0], False), (codes[2][:-8] + "00000000", codes[2].split()[0], True), ("hello", None, False)):
            phone.open(page, before="window.BarcodeDetector = class { async detect() { return [{rawValue: %s}]; } };" % json.dumps(code))
            phone.tap_on("#scan")
            phone.run("new Promise((done) => setTimeout(done, 1500))")
            check(hidden(phone, "#camera"), "the camera stays open")
            if tag is None:
                check("hello" in phone.text("#message") and hidden(phone, "#log"), "a strange code gives", phone.text("#message"))
                continue
            check(phone.text("#tag") == tag, "scanned", code, "found", phone.text("#tag"))
            check(phone.is_seen("#warning") == warned, code, "warned:", phone.is_seen("#warning"))
        check(len(codes) == len(words["logs"]), "codes", len(codes), "logs", len(words["logs"]))
    finally:
        phone.close()


def codes_of_tags(folder):
    subprocess.run(["pdftoppm", "-r", "150", "-gray", "-png", folder / "tags.pdf", folder / "tags"], check=True)
    read = subprocess.run(["zbarimg", "-q", "--raw", *sorted(folder.glob("tags-*.png"))], check=True, capture_output=True, text=True)
    return sorted(read.stdout.split("\n")[:-1])


def frame_times(phone):
    """Milliseconds between pictures while a finger turns the shell."""
    phone.run("window.times = []; (function next(t) { times.push(t); if (times.length < 4000) requestAnimationFrame(next); })(performance.now())")
    x, y = middle_of(phone)
    phone.touch("touchStart", (x, y))
    for i in range(60):
        phone.touch("touchMove", (x + 2 * i, y + i))
    phone.touch("touchEnd")
    times = phone.run("times.splice(0)")
    gaps = sorted(b - a for a, b in zip(times, times[1:]))
    return gaps[len(gaps) // 2], gaps[len(gaps) * 95 // 100]


def demo():
    page = export(MODELS / "ell-house.roundlay", "demo")
    check(page.stat().st_size <= 3_000_000, "the demo's page has", page.stat().st_size, "bytes")
    phone = browser.Browser(*PHONE)
    try:
        phone.ask("Network.emulateNetworkConditions", offline=True, latency=0, downloadThroughput=0, uploadThroughput=0)
        phone.open(page)
        fingers_can_hit(phone, "the page")
        a_tap_marks_what_is_under_it(phone, "WebGL")
        fingers_turn_and_come_nearer(phone)
        a_search_finds(phone, page)
        neighbours_lead_on(phone, page)
        the_raise_is_stepped_through(phone, page)
        a_sheet_is_shown(phone, page)
        bright_and_dark_can_be_read(phone, page)
        nothing_from_outside(phone, page, "the demo's page")
        phone.size(844, 390)
        phone.tap_on("#back")
        fingers_can_hit(phone, "on its side, the page")
        phone.picture(WORK / "demo-side.png")
        check(phone.box("#stage")[3] > 200, "on its side the shell has no room:", phone.box("#stage"))
        check(phone.run("fetch('data:text/plain,x').then(() => 'fetched', () => 'refused')") == "refused", "the page may ask the network")
        phone.open(page, "#" + said(page)["logs"][7]["tag"])
        check(phone.text("#tag") == said(page)["logs"][7]["tag"], "an address with a tag does not open with it")
    finally:
        phone.close()


def without_webgl():
    page = WORK / "demo" / "yard.html"
    phone = browser.Browser(*PHONE, arguments=("--disable-3d-apis",))
    try:
        phone.open(page)
        check(phone.text("#message") == said(page)["say"]["flat"], "nothing is said of a browser without WebGL")
        a_tap_marks_what_is_under_it(phone, "without WebGL", 3) # its dots are larger
        print("without WebGL, of %d logs: a picture every %.0f ms (95 of 100: %.0f ms)" % (len(said(page)["logs"]), *frame_times(phone)))
        phone.picture(WORK / "demo-plain.png")
        check(not phone.problems, "without WebGL:", phone.problems)
    finally:
        phone.close()


def seven_hundred():
    page = export(written("many", houses.comb(8, 20, '"Many logs"')), "many")
    words = said(page)
    check(len(words["logs"]) >= 700, "only", len(words["logs"]), "logs")
    phone = browser.Browser(*PHONE)
    try:
        opened = phone.open(page)
        median, most = frame_times(phone)
        print("%d logs, %d bytes: open after %.1f s, a picture every %.0f ms (95 of 100: %.0f ms), drawn by the processor"
              % (len(words["logs"]), page.stat().st_size, opened, median, most))
        check(opened < 30 and median < 400, "too slow:", opened, median)
        begin = time.monotonic()
        choose_by_search(phone, words["logs"][500]["tag"])
        check(phone.text("#tag") == words["logs"][500]["tag"], "one of many is not found")
        check(time.monotonic() - begin < 10, "searching takes", time.monotonic() - begin)
        the_raise_is_stepped_through(phone, page)
        nothing_from_outside(phone, page, "a page of many logs")
    finally:
        phone.close()


def names_of_any_kind():
    name = '</script><script>document.title="taken"</script>"\'&amp;<!-- \\u00e9 \u65e5\u672c \u05d0/'
    log = '\n[[log]]\nwall = "W1"\nround = 2\nmark = %s\nnote = %s\n'
    quoted = lambda text: json.dumps(text, ensure_ascii=False)
    document = written("names", houses.comb(1, 4, quoted(name), log % (quoted("<b>\"x\" 'y' & \u2028/\\"), quoted("</dd><img src=x onerror=alert(1)>"))))
    page = export(document, "names", only="page,tags")
    phone = browser.Browser(*PHONE)
    try:
        phone.open(page)
        check(phone.run("document.title") == name and phone.text("h1") == name, "the shell is called", phone.run("document.title"))
        choose_by_search(phone, "W1-02-1")
        for text in ("<b>\"x\" 'y' & ", "</dd><img src=x onerror=alert(1)>"):
            check(text in phone.text("#lines"), "the log does not say", text)
        check(phone.run("document.querySelectorAll('#lines img, #lines b').length") == 0, "names have become parts of the page")
        nothing_from_outside(phone, page, "a page of odd names")
    finally:
        phone.close()
    a_tag_is_scanned(page, codes_of_tags(page.parent))


def in_french():
    page = export(MODELS / "one-room.roundlay", "french", "fr")
    phone = browser.Browser(*PHONE)
    try:
        phone.open(page)
        check(phone.run("document.documentElement.lang") == "fr", "the French page is in", phone.run("document.documentElement.lang"))
        choose_by_search(phone, said(page)["logs"][0]["tag"])
        phone.picture(WORK / "french.png")
        fingers_can_hit(phone, "in French")
        for word in ("Poids, estimé", "Bois"):
            check(word in phone.text("#lines"), "the French page does not say", word)
    finally:
        phone.close()


WORK.mkdir(parents=True, exist_ok=True)
for part in (demo, without_webgl, seven_hundred, names_of_any_kind, in_french):
    begin = time.monotonic()
    part()
    print(f"{part.__name__}: {time.monotonic() - begin:.0f} s", flush=True)
print(f"{len(wrong)} wrong" if wrong else "the yard page holds")
sys.exit(1 if wrong else 0)
