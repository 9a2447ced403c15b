
// --- tags read with the camera, where the browser reads codes ---

const may_scan = "BarcodeDetector" in window;

/// What a tag's code says: "A-05-1 r.B 3f9a01c2", tag, revision where there is one, and the log's own digits. Gives
/// {index, same}: `same` is false where the digits are another log's, and index null where no log is called so.
function read_tag(text, logs) {
    const words = text.trim().split(" "), digits = words[words.length - 1];
    for (let count = words.length; count > 0; --count) {
        const index = logs.findIndex((log) => log.tag === words.slice(0, count).join(" "));
        if (index >= 0) return {index, same: count === words.length || digits === logs[index].code};
    }
    return {index: null, same: false};
}

class Scanner {
    /// `box`: where the camera's picture is shown; `found(text)`; `problem(label)`.
    constructor(box, found, problem) {
        Object.assign(this, {box, found, problem});
        this.video = box.querySelector("video");
        box.querySelector("input").addEventListener("change", (event) => this.look_at_picture(event.target));
    }

    async open() {
        this.box.hidden = false;
        try {
            this.detector ||= new BarcodeDetector({formats: ["qr_code"]});
            this.stream = await navigator.mediaDevices.getUserMedia({video: {facingMode: "environment"}});
            this.video.srcObject = this.stream;
            await this.video.play();
            this.look();
        } catch (problem) {
            this.problem("no_camera"); // a picture can still be taken
        }
    }

    async look() {
        if (!this.stream) return;
        const codes = await this.detector.detect(this.video).catch(() => []);
        if (!this.stream) return;
        if (codes.length > 0) return this.take(codes[0].rawValue);
        setTimeout(() => this.look(), 150);
    }

    async look_at_picture(input) {
        if (!input.files.length) return;
        const codes = await createImageBitmap(input.files[0]).then((picture) => this.detector.detect(picture)).catch(() => []);
        input.value = "";
        if (codes.length > 0) this.take(codes[0].rawValue);
        else this.problem("no_code");
    }

    take(text) {
        this.close();
        this.found(text);
    }

    close() {
        for (const track of this.stream ? this.stream.getTracks() : []) track.stop();
        this.stream = null, this.video.srcObject = null;
        this.box.hidden = true;
    }
}
