
// --- drawn without a graphics processor: every triangle by itself, the nearest wins each dot ---

const most_dots = 160000; // of a picture that a slow phone still turns

class PlainPainter {
    constructor(canvas, shell) {
        this.canvas = canvas, this.shell = shell;
        this.context = canvas.getContext("2d");
        this.placed = new Float32Array(shell.points.length);
    }

    draw(camera, seen, chosen, look) {
        const scale = Math.min(1, Math.sqrt(most_dots / (this.canvas.width * this.canvas.height)));
        const width = Math.max(1, Math.round(this.canvas.width * scale)), height = Math.max(1, Math.round(this.canvas.height * scale));
        if (!this.picture || this.picture.width !== width || this.picture.height !== height) {
            this.picture = new ImageData(width, height);
            this.depth = new Float32Array(width * height);
            this.small = document.createElement("canvas");
            this.small.width = width, this.small.height = height;
        }
        this.place(camera, width, height);
        this.dots = new Uint32Array(this.picture.data.buffer).fill(packed_colour(look.ground, 1));
        this.depth.fill(0);
        this.fill(camera, 0, seen.triangles, null);
        for (const range of chosen) this.fill(camera, range.triangle, range.triangles_end, look.chosen);
        this.small.getContext("2d").putImageData(this.picture, 0, 0);
        this.context.drawImage(this.small, 0, 0, this.canvas.width, this.canvas.height);
    }

    /// Where each corner is on the picture; the third number is larger the nearer it is.
    place(camera, width, height) {
        const m = camera.matrix(), from = this.shell.points, to = this.placed;
        for (let i = 0; i < from.length; i += 3) {
            const x = from[i], y = from[i + 1], z = from[i + 2], w = m[3] * x + m[7] * y + m[11] * z + m[15];
            to[i] = (1 + (m[0] * x + m[4] * y + m[8] * z + m[12]) / w) * width / 2;
            to[i + 1] = (1 - (m[1] * x + m[5] * y + m[9] * z + m[13]) / w) * height / 2;
            to[i + 2] = w > 0 ? 1 / w : 0;
        }
    }

    fill(camera, first, end, tint) {
        const {triangles, normals, colours} = this.shell, {back, up} = camera.axes();
        const light = [0, 1, 2].map((i) => 0.8 * back[i] + 0.6 * up[i]);
        for (let i = first; i < end; i += 3) {
            const n = 4 * triangles[i];
            const lit = 0.62 + (0.26 * (normals[n] * light[0] + normals[n + 1] * light[1] + normals[n + 2] * light[2]) + 0.12 * normals[n + 2]) / 127;
            const own = [colours[n] / 255, colours[n + 1] / 255, colours[n + 2] / 255];
            this.triangle(triangles[i] * 3, triangles[i + 1] * 3, triangles[i + 2] * 3,
                packed_colour(tint ? own.map((c, k) => 0.15 * c + 0.85 * tint[k]) : own, lit));
        }
    }

    triangle(a, b, c, colour) {
        const p = this.placed, {width, height} = this.picture;
        const ax = p[a], ay = p[a + 1], bx = p[b], by = p[b + 1], cx = p[c], cy = p[c + 1];
        const area = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
        if (area >= 0 || p[a + 2] <= 0 || p[b + 2] <= 0 || p[c + 2] <= 0) return; // from behind, or behind the eye
        const left = Math.max(0, Math.ceil(Math.min(ax, bx, cx) - 0.5)), right = Math.min(width - 1, Math.floor(Math.max(ax, bx, cx) - 0.5));
        const top = Math.max(0, Math.ceil(Math.min(ay, by, cy) - 0.5)), foot = Math.min(height - 1, Math.floor(Math.max(ay, by, cy) - 0.5));
        for (let y = top; y <= foot; ++y)
            for (let x = left; x <= right; ++x) {
                const u = ((bx - x - 0.5) * (cy - y - 0.5) - (cx - x - 0.5) * (by - y - 0.5)) / area;
                const v = ((cx - x - 0.5) * (ay - y - 0.5) - (ax - x - 0.5) * (cy - y - 0.5)) / area;
                if (u < 0 || v < 0 || u + v > 1) continue;
                const near = u * p[a + 2] + v * p[b + 2] + (1 - u - v) * p[c + 2], dot = y * width + x;
                if (near < this.depth[dot]) continue;
                this.depth[dot] = near;
                this.dots[dot] = colour;
            }
    }
}

function packed_colour(rgb, lit) {
    const [r, g, b] = rgb.map((part) => Math.max(0, Math.min(255, Math.round(part * lit * 255))));
    return (255 << 24 | b << 16 | g << 8 | r) >>> 0;
}
