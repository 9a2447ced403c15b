
// --- the shell on its canvas: drawn when something has changed, tapped, turned ---

/// "#rrggbb" of a variable of the style, as three parts of 1.
function colour_of(name) {
    const text = getComputedStyle(document.documentElement).getPropertyValue(name).trim();
    return [1, 3, 5].map((i) => parseInt(text.substr(i, 2), 16) / 255);
}

const late_after = 70; // ms from picture to picture

class Shown {
    /// `yard`: what the page says; `tapped(index or null)`.
    constructor(canvas, yard, meshes, tapped) {
        Object.assign(this, {canvas, yard, meshes, tapped, chosen: null, raised: yard.steps.length});
        const order = yard.steps.flatMap(([logs]) => logs);
        this.shell = shell_of(yard.logs, meshes, yard.parts, order);
        this.step_of = [];
        yard.steps.forEach(([logs], step) => logs.forEach((log) => { this.step_of[log] = step; }));
        this.ends_of_steps = yard.steps.map(([logs]) => this.shell.ranges[logs[logs.length - 1]]);
        this.camera = new Camera(...this.bounds());
        this.is_plain = false;
        try {
            this.painter = new WebGlPainter(canvas, this.shell);
        } catch (problem) {
            this.plain();
        }
        canvas.addEventListener("webglcontextlost", (event) => event.preventDefault());
        canvas.addEventListener("webglcontextrestored", () => { this.painter = new WebGlPainter(canvas, this.shell); this.again(); });
        listen_to_fingers(this.canvas, {
            turn: (dx, dy) => { this.camera.turn(dx, dy); this.moved(); },
            move: (dx, dy) => { this.camera.move(dx, dy); this.moved(); },
            nearer: (times) => { this.camera.come_nearer(times); this.moved(); },
            tap: (x, y) => this.tapped(this.log_at(x, y)),
        });
        new ResizeObserver(() => this.fit()).observe(this.canvas.parentElement);
        matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => { this.look = null; this.again(); });
        this.fit();
    }

    /// Without a graphics processor. A canvas that has been asked for one gives no other: it is put in its place.
    plain() {
        const other = this.canvas.cloneNode();
        this.canvas.replaceWith(other);
        this.canvas = other, this.is_plain = true;
        this.painter = new PlainPainter(other, this.shell);
    }

    bounds() {
        const low = [Infinity, Infinity, Infinity], high = [-Infinity, -Infinity, -Infinity], points = this.shell.points;
        for (let i = 0; i < points.length; ++i) low[i % 3] = Math.min(low[i % 3], points[i]), high[i % 3] = Math.max(high[i % 3], points[i]);
        return points.length > 0 ? [low, high] : [[0, 0, 0], [1, 1, 1]];
    }

    fit() {
        const box = this.canvas.parentElement.getBoundingClientRect(), dots = Math.min(2, window.devicePixelRatio || 1) * (this.is_late ? 0.5 : 1);
        this.camera.width = Math.max(1, box.width), this.camera.height = Math.max(1, box.height);
        this.canvas.width = Math.round(this.camera.width * dots), this.canvas.height = Math.round(this.camera.height * dots);
        this.draw();
    }

    /// At the next picture of the screen, once.
    again() {
        if (this.waits) return;
        this.waits = true;
        requestAnimationFrame(() => { this.waits = false; this.draw(); });
    }

    /// Where pictures come late while fingers move there are fewer dots; all of them again when they rest.
    moved() {
        const now = performance.now(), gap = now - (this.moved_at || 0);
        this.moved_at = now;
        if (!this.waits && gap < 1000) this.gap = 0.6 * (this.gap || 0) + 0.4 * gap;
        if (this.gap > late_after && !this.is_late && !this.is_plain) this.is_late = true, this.fit();
        clearTimeout(this.rest);
        this.rest = setTimeout(() => { this.gap = 0; if (this.is_late) this.is_late = false, this.fit(); }, 400);
        this.again();
    }

    draw() {
        this.look ||= {ground: colour_of("--ground"), edge: colour_of("--edge"), chosen: colour_of("--chosen")};
        const last = this.ends_of_steps[this.raised - 1] || {triangles_end: 0, ends_end: 0};
        const chosen = this.chosen === null ? this.just_raised() : [this.chosen];
        this.painter.draw(this.camera, {triangles: last.triangles_end, ends: last.ends_end}, chosen.map((log) => this.shell.ranges[log]), this.look);
    }

    /// The logs of the last step, while not all are up.
    just_raised() {
        return this.raised > 0 && this.raised < this.yard.steps.length ? this.yard.steps[this.raised - 1][0] : [];
    }

    log_at(x, y) {
        const [from, way] = this.camera.ray(x, y);
        let nearest = Infinity, found = null;
        this.yard.logs.forEach((log, index) => {
            if (!(this.step_of[index] < this.raised)) return;
            const along = ray_meets(log, this.meshes[log.model], from, way);
            if (along < nearest) nearest = along, found = index;
        });
        return found;
    }

    /// `index`: of a log, or null.
    choose(index) {
        this.chosen = index;
        if (index !== null) this.raised = Math.max(this.raised, this.step_of[index] + 1);
        this.again();
    }

    look_at(index) {
        const log = this.yard.logs[index], {low, high} = this.meshes[log.model];
        this.camera.look_at(to_world(log.at, ...low.map((l, i) => (l + high[i]) / 2)));
        this.again();
    }

    raise(steps) {
        this.raised = steps;
        this.again();
    }

    home() {
        this.camera.home();
        this.again();
    }
}
