
// --- the page: what is where, and what a tap does ---

const yard = JSON.parse(document.getElementById("words").textContent);
const words_of = (index) => yard.words[index];

/// A sentence with what is only known here.
function say(key, ...amounts) {
    return yard.say[key].replace(/%([1-9])/g, (hole, number) => String(amounts[number - 1] ?? hole));
}

function make(kind, attributes = {}, ...children) {
    const element = document.createElement(kind);
    for (const [name, value] of Object.entries(attributes))
        if (typeof value === "function") element.addEventListener(name, value);
        else if (value === true) element.setAttribute(name, "");
        else if (value !== false) element.setAttribute(name, value);
    element.append(...children);
    return element;
}
const button = (words, click, attributes = {}) => make("button", {type: "button", click, ...attributes}, words);

class Page {
    constructor() {
        this.canvas = make("canvas", {id: "shell", role: "img", "aria-label": say("shell")});
        this.message = make("p", {id: "message", role: "status", hidden: true});
        document.body.append(
            make("main", {}, this.head(), make("div", {id: "stage"}, this.canvas, this.message), this.log_panel(), this.raise_bar()),
            this.list(), this.paper_box(), this.camera_box());
        this.shown = new Shown(this.canvas, yard, read_meshes(unpacked("meshes")), (index) => this.choose(index));
        this.canvas = this.shown.canvas;
        this.scanner = new Scanner(this.camera, (text) => this.scanned(text), (label) => this.tell(say(label)));
        this.raise(yard.steps.length);
        this.tell(say(this.shown.is_plain ? "flat" : "help"));
        document.addEventListener("keydown", (event) => { if (event.key === "Escape") this.go_back(); });
        this.from_address();
        window.addEventListener("hashchange", () => this.from_address());
    }

    head() {
        this.find = make("input", {type: "search", id: "find", placeholder: say("find"), "aria-label": say("find"), autocomplete: "off",
            autocapitalize: "characters", spellcheck: "false", enterkeyhint: "search", input: () => this.look_for(),
            focus: () => this.look_for(), keydown: (event) => { if (event.key === "Enter") this.take_first(); }});
        return make("header", {}, make("h1", {}, yard.name), make("div", {class: "row"}, this.find,
            button(say("logs"), () => this.show_list(""), {id: "logs"}),
            may_scan ? button(say("scan"), () => this.scanner.open(), {id: "scan"}) : ""));
    }

    log_panel() {
        this.tag = make("h2", {id: "tag"});
        this.lines = make("dl", {id: "lines"});
        this.warning = make("p", {id: "warning", class: "warning", role: "alert", hidden: true});
        this.sheet_button = button(say("sheet"), () => this.show_sheet(0), {id: "sheet"});
        this.panel = make("section", {id: "log", hidden: true, "aria-live": "polite"}, make("div", {class: "row"}, this.tag, this.sheet_button,
            button(say("close"), () => this.choose(null), {id: "close_log"})), this.warning, this.lines);
        return this.panel;
    }

    raise_bar() {
        this.slider = make("input", {type: "range", id: "steps", min: 0, max: yard.steps.length, value: yard.steps.length, "aria-label": say("raise"),
            input: () => this.raise(Number(this.slider.value), true)});
        this.step = make("p", {id: "step"});
        this.caution = make("p", {id: "caution", class: "small", hidden: true}, yard.caution);
        const by = (steps) => () => this.raise(Math.min(yard.steps.length, Math.max(0, this.shown.raised + steps)), true);
        return make("footer", {}, this.step, this.caution, make("div", {class: "row"}, button(say("back"), by(-1), {id: "back"}), this.slider,
            button(say("next"), by(1), {id: "next"}), button(say("whole"), () => this.whole(), {id: "whole"})));
    }

    list() {
        this.found = make("div", {id: "found"});
        this.list_box = make("section", {id: "list", class: "over", hidden: true, role: "dialog", "aria-label": say("logs")},
            make("div", {class: "row end"}, button(say("close"), () => this.hide_list(), {id: "close_list"})), this.found);
        return this.list_box;
    }

    paper_box() {
        this.sheet_title = make("span", {id: "sheet_title"});
        this.frame = make("div", {id: "frame"});
        this.turn_over = button(say("next"), () => this.show_sheet(this.sheet_at + 1), {id: "next_sheet"});
        this.box = make("section", {id: "paper", class: "over", hidden: true, role: "dialog", "aria-label": say("sheet")},
            make("div", {class: "row"}, this.sheet_title, this.turn_over, button("\u2212", () => this.paper.nearer(0.67), {"aria-label": say("farther")}),
                button("+", () => this.paper.nearer(1.5), {id: "nearer", "aria-label": say("nearer")}),
                button(say("close"), () => { this.box.hidden = true; }, {id: "close_paper"})), this.frame);
        return this.box;
    }

    camera_box() {
        this.camera = make("section", {id: "camera", class: "over", hidden: true, role: "dialog", "aria-label": say("scan")},
            make("div", {class: "row end"}, make("label", {class: "button"}, say("picture"),
                make("input", {type: "file", accept: "image/*", capture: "environment"})),
                button(say("close"), () => this.scanner.close(), {id: "close_camera"})),
            make("video", {playsinline: true, muted: true}));
        return this.camera;
    }

    /// Gone after a while, or when something else is told.
    tell(words) {
        this.message.textContent = words;
        this.message.hidden = false;
        clearTimeout(this.hush);
        this.hush = setTimeout(() => { this.message.hidden = true; }, 8000);
    }

    choose(index) {
        this.shown.choose(index);
        this.panel.hidden = index === null;
        this.warning.hidden = true;
        this.chosen = index;
        this.raise(this.shown.raised);
        if (index === null) return;
        this.message.hidden = true;
        this.tag.textContent = yard.logs[index].tag;
        this.lines.replaceChildren(...yard.logs[index].lines.flatMap(([name, words]) => this.line(words_of(name), words)));
        this.panel.scrollTop = 0;
    }

    line(name, words) {
        if (!Array.isArray(words)) return [make("dt", {}, name), make("dd", {}, words_of(words))];
        return [make("dt", {}, name), make("dd", {}, ...words.map((tag) => this.way_to(tag)))];
    }

    /// Another log that is named: tapped, it is chosen.
    way_to(tag) {
        const index = yard.logs.findIndex((log) => log.tag === tag);
        return index < 0 ? make("span", {}, tag) : button(tag, () => this.go_to(index), {class: "tag"});
    }

    go_to(index) {
        this.hide_list();
        this.choose(index);
        this.shown.look_at(index);
    }

    raise(steps, by_hand) {
        this.shown.raise(steps);
        if (by_hand && this.chosen !== null && this.chosen !== undefined) this.choose_none();
        this.slider.value = steps;
        const whole = steps === yard.steps.length, [logs, lift, then] = yard.steps[steps - 1] || [[], -1, -1];
        this.caution.hidden = whole && !by_hand || steps === 0;
        if (whole && !by_hand) this.step.textContent = say("all_up");
        else if (steps === 0) this.step.textContent = say("no_step");
        else this.step.textContent = [say("step", steps, yard.steps.length, yard.logs[logs[0]].tag), say("lift", words_of(lift)),
            words_of(then) ? say("then", words_of(then)) : ""].filter(Boolean).join(". ") + ".";
    }

    choose_none() {
        this.shown.choose(null);
        this.panel.hidden = true;
        this.chosen = null;
    }

    whole() {
        this.choose_none();
        this.shown.home();
        this.raise(yard.steps.length);
    }

    look_for() {
        if (this.find.value.trim()) this.show_list(this.find.value.trim());
        else this.hide_list();
    }

    matching(text) {
        const wanted = text.toLocaleUpperCase();
        const matches = yard.logs.map((log, index) => index).filter((index) => yard.logs[index].tag.toLocaleUpperCase().includes(wanted));
        const whole = matches.findIndex((index) => yard.logs[index].tag.toLocaleUpperCase() === wanted);
        if (whole > 0) matches.unshift(...matches.splice(whole, 1));
        return matches;
    }

    show_list(text) {
        const matches = this.matching(text), rows = [];
        let part = null;
        for (const index of matches) {
            const log = yard.logs[index];
            if (log.part !== part && !text) rows.push(make("h3", {}, yard.parts[log.part][0]));
            part = log.part;
            rows.push(button(log.tag, () => this.go_to(index), {class: "tag"}));
        }
        this.found.replaceChildren(...(rows.length ? rows : [make("p", {}, say("none", text))]));
        this.list_box.style.top = document.querySelector("header").getBoundingClientRect().bottom + "px";
        this.list_box.hidden = false;
    }

    take_first() {
        const [first] = this.matching(this.find.value.trim());
        if (this.find.value.trim() && first !== undefined) this.go_to(first);
        this.find.blur();
    }

    hide_list() { this.list_box.hidden = true; }

    scanned(text) {
        const {index, same} = read_tag(text, yard.logs);
        if (index === null) return this.tell(say("none", text));
        this.go_to(index);
        if (same) return;
        this.warning.textContent = say("other_state", yard.logs[index].tag);
        this.warning.hidden = false;
    }

    show_sheet(at) {
        this.box.hidden = false;
        this.paper ||= new Paper(JSON.parse(new TextDecoder().decode(unpacked("sheets"))), this.frame);
        const sheets = this.paper.sheets_of(yard.logs[this.chosen].model);
        if (!sheets.length) { this.box.hidden = true; return; }
        this.sheet_at = at % sheets.length;
        this.turn_over.hidden = sheets.length < 2;
        this.sheet_title.textContent = `${yard.logs[this.chosen].tag}: ${say("sheets", this.sheet_at + 1, sheets.length)}`;
        this.paper.show(sheets[this.sheet_at]);
    }

    go_back() {
        if (!this.camera.hidden) this.scanner.close();
        else if (!this.box.hidden) this.box.hidden = true;
        else if (!this.list_box.hidden) this.hide_list();
        else this.choose(null);
    }

    /// yard.html#A-03-1 opens with that log.
    from_address() {
        let tag = location.hash.slice(1);
        try { tag = decodeURIComponent(tag); } catch (problem) { /* as it was typed */ }
        const index = yard.logs.findIndex((log) => log.tag === tag);
        if (index >= 0) this.go_to(index);
    }
}

new Page();
