
// --- camera: goes round a point; everything in mm, z up ---

class Camera {
    constructor(low, high) {
        this.middle = low.map((l, i) => (l + high[i]) / 2);
        this.radius = Math.max(1, Math.hypot(...low.map((l, i) => high[i] - l)) / 2);
        this.width = this.height = 1;
        this.home();
    }

    home() {
        this.target = [...this.middle];
        this.yaw = -0.7, this.pitch = 0.45, this.nearness = 1;
    }

    /// So far that all of it is seen however it is turned, on a screen that is higher than wide as well.
    get distance() {
        const half = Math.tan(this.half_angle) * Math.min(1, this.width / this.height);
        return this.radius / Math.sin(Math.atan(half)) / this.nearness;
    }
    get half_angle() { return 0.35; }

    axes() {
        const [sy, cy, sp, cp] = [Math.sin(this.yaw), Math.cos(this.yaw), Math.sin(this.pitch), Math.cos(this.pitch)];
        return {right: [cy, sy, 0], up: [-sp * sy, sp * cy, cp], back: [cp * sy, -cp * cy, sp]};
    }

    eye() {
        const {back} = this.axes();
        return this.target.map((t, i) => t + back[i] * this.distance);
    }

    turn(dx, dy) {
        this.yaw -= dx * 0.008;
        this.pitch = Math.min(1.55, Math.max(-1.2, this.pitch + dy * 0.008));
    }

    come_nearer(times) { this.nearness = Math.min(60, Math.max(0.5, this.nearness * times)); }

    /// What is looked at goes with the fingers.
    move(dx, dy) {
        const mm = 2 * this.distance * Math.tan(this.half_angle) / this.height, {right, up} = this.axes();
        this.target = this.target.map((t, i) => t - right[i] * dx * mm + up[i] * dy * mm);
    }

    look_at(point) { this.target = [...point]; }

    /// The way from the eye through a place on the screen, in its pixels from the upper left.
    ray(x, y) {
        const {right, up, back} = this.axes(), tan = Math.tan(this.half_angle);
        const u = (2 * x / this.width - 1) * tan * this.width / this.height, v = (1 - 2 * y / this.height) * tan;
        return [this.eye(), [0, 1, 2].map((i) => right[i] * u + up[i] * v - back[i])];
    }

    /// World to clip space, by columns as WebGL has it.
    matrix() {
        const {right, up, back} = this.axes(), eye = this.eye(), f = 1 / Math.tan(this.half_angle), g = f * this.height / this.width;
        const off = Math.hypot(...eye.map((e, i) => e - this.middle[i]));
        const near = Math.max(this.distance * 0.01, off - this.radius * 1.1), far = Math.max(near * 2, off + this.radius * 1.1);
        const a = -(far + near) / (far - near), b = -2 * far * near / (far - near);
        const along = (axis) => -(axis[0] * eye[0] + axis[1] * eye[1] + axis[2] * eye[2]);
        const [r, u, k] = [along(right), along(up), along(back)], m = new Float32Array(16);
        for (let i = 0; i < 3; ++i) m.set([g * right[i], f * up[i], a * back[i], -back[i]], 4 * i);
        m.set([g * r, f * u, a * k + b, -k], 12);
        return m;
    }
}
