
// --- cut sheets, drawn as they are on paper ---

const svg_names = "http://www.w3.org/2000/svg";

function svg(kind, attributes, text) {
    const element = document.createElementNS(svg_names, kind);
    for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
    if (text !== undefined) element.textContent = text;
    return element;
}

/// Between paper and ink; `grey`: 0 is ink, 100 paper.
function grey_of(grey) {
    const paper = colour_of("--paper"), ink = colour_of("--ink");
    return `rgb(${ink.map((part, i) => Math.round(255 * (part + (paper[i] - part) * grey / 100))).join(",")})`;
}

class Paper {
    /// `data`: as packed_sheets.cpp writes it; `frame`: the element that a sheet is shown in.
    constructor(data, frame) {
        Object.assign(this, {data, frame});
        listen_to_fingers(frame, {
            move: (dx, dy) => this.move(dx, dy),
            nearer: (times, x, y) => this.nearer(times, x, y),
        });
        matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => { if (this.sheet) this.show(this.sheet, true); });
    }

    sheets_of(model) { return this.data.models[model]; }
    title_of(sheet) { return this.data.words[sheet.t]; }

    show(sheet, as_it_stands) {
        this.sheet = sheet;
        this.drawing = svg("svg", {role: "img", "aria-label": this.title_of(sheet)});
        this.drawing.append(svg("rect", {width: sheet.w, height: sheet.h, fill: grey_of(100)}));
        for (const item of sheet.d) this.drawing.append(this.drawn(item));
        for (const text of sheet.x) this.drawing.append(this.written(text));
        this.frame.replaceChildren(this.drawing);
        if (!as_it_stands) this.whole();
        this.place();
    }

    drawn(item) {
        if (item[0] === "g") return svg("path", {d: item[2], fill: grey_of(item[1]), "fill-rule": "evenodd"});
        if (item[0] === "p") {
            const [, x, y, width, height, png] = item;
            return svg("image", {x, y, width, height, preserveAspectRatio: "none", href: "data:image/png;base64," + png});
        }
        const [width, dashes] = this.data.lines[item[0]];
        const ends = dashes.length ? {"stroke-dasharray": dashes.join(" ")} : {"stroke-linecap": "round"};
        return svg("path", {d: item[1], fill: "none", stroke: grey_of(0), "stroke-width": width, "stroke-linejoin": "round", ...ends});
    }

    written([words, x, y, size, width, bold, turn]) {
        const look = {x, y, "font-size": size, textLength: width, lengthAdjust: "spacingAndGlyphs", fill: grey_of(0),
            "font-family": "'DejaVu Sans',Verdana,sans-serif"};
        if (bold) look["font-weight"] = "bold";
        if (turn) look.transform = `rotate(${turn} ${x} ${y})`;
        return svg("text", look, this.data.words[words]);
    }

    /// Pixels of the screen for a tenth of a millimetre.
    whole() {
        const box = this.frame.getBoundingClientRect();
        this.scale = this.least = Math.min(box.width / this.sheet.w, box.height / this.sheet.h);
        this.x = (box.width - this.sheet.w * this.scale) / 2, this.y = (box.height - this.sheet.h * this.scale) / 2;
    }

    place() {
        const box = this.frame.getBoundingClientRect();
        this.drawing.setAttribute("width", box.width);
        this.drawing.setAttribute("height", box.height);
        this.drawing.setAttribute("viewBox", [-this.x / this.scale, -this.y / this.scale, box.width / this.scale, box.height / this.scale].join(" "));
    }

    move(dx, dy) {
        this.x += dx, this.y += dy;
        this.keep();
    }

    nearer(times, x, y) {
        const box = this.frame.getBoundingClientRect();
        x ??= box.width / 2, y ??= box.height / 2;
        const scale = Math.min(this.least * 40, Math.max(this.least, this.scale * times)), by = scale / this.scale;
        this.x = x - (x - this.x) * by, this.y = y - (y - this.y) * by, this.scale = scale;
        this.keep();
    }

    /// Some of it stays in sight.
    keep() {
        const box = this.frame.getBoundingClientRect(), width = this.sheet.w * this.scale, height = this.sheet.h * this.scale;
        this.x = Math.min(box.width * 0.7, Math.max(box.width * 0.3 - width, this.x));
        this.y = Math.min(box.height * 0.7, Math.max(box.height * 0.3 - height, this.y));
        this.place();
    }
}
