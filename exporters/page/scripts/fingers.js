
// --- fingers, a mouse or a pen on something that is turned, moved and tapped ---

const tap_reach = 12, tap_time = 500; // pixels that a finger trembles; ms

/// `does`: {turn(dx, dy), move(dx, dy), nearer(times, x, y), tap(x, y)}, all in pixels of the element; any may be left out.
function listen_to_fingers(element, does) {
    const down = new Map();
    let begun = null, was_tap = false;
    const place = (event) => {
        const box = element.getBoundingClientRect();
        return {x: event.clientX - box.left, y: event.clientY - box.top};
    };
    const middle = () => {
        const all = [...down.values()];
        return {x: all.reduce((s, p) => s + p.x, 0) / all.length, y: all.reduce((s, p) => s + p.y, 0) / all.length,
            spread: all.length > 1 ? Math.hypot(all[0].x - all[1].x, all[0].y - all[1].y) : 0};
    };
    element.addEventListener("pointerdown", (event) => {
        element.setPointerCapture(event.pointerId);
        down.set(event.pointerId, place(event));
        begun = down.size === 1 ? {...place(event), at: event.timeStamp} : null;
    });
    element.addEventListener("pointermove", (event) => {
        if (!down.has(event.pointerId)) return;
        const before = middle();
        down.set(event.pointerId, place(event));
        const now = middle(), dx = now.x - before.x, dy = now.y - before.y;
        if (begun && Math.hypot(now.x - begun.x, now.y - begun.y) > tap_reach) begun = null;
        if (begun) return;
        if (down.size > 1 || event.shiftKey || event.buttons === 2) does.move?.(dx, dy);
        else (does.turn || does.move)?.(dx, dy);
        if (before.spread > 0 && now.spread > 0) does.nearer?.(now.spread / before.spread, now.x, now.y);
    });
    const up = (event) => {
        const tapped = begun && event.type === "pointerup" && event.timeStamp - begun.at < tap_time;
        down.delete(event.pointerId);
        was_tap = tapped && "tap" in does;
        if (was_tap) does.tap(begun.x, begun.y);
        begun = null;
    };
    element.addEventListener("pointerup", up);
    element.addEventListener("pointercancel", up);
    // Or a browser clicks as well, at the same place, where by then a button may have come.
    element.addEventListener("touchend", (event) => { if (was_tap && event.cancelable) event.preventDefault(); }, {passive: false});
    element.addEventListener("contextmenu", (event) => event.preventDefault());
    element.addEventListener("wheel", (event) => {
        event.preventDefault();
        const {x, y} = place(event);
        does.nearer?.(Math.exp(-event.deltaY * 0.0015), x, y);
    }, {passive: false});
}
