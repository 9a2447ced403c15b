#include "exporters/sheets/drawing/block.h"

#include "exporters/sheets/drawing/text.h"

namespace roundlay::sheets {
namespace {

void shift(std::vector<Vec2> &points, Vec2 by) {
    for (Vec2 &p : points)
        p = p + by;
}

void shift(Path &path, Vec2 by) {
    shift(path.points, by);
}
void shift(Circle &circle, Vec2 by) {
    circle.centre = circle.centre + by;
}
void shift(Arc &arc, Vec2 by) {
    arc.centre = arc.centre + by;
}
void shift(Fill &fill, Vec2 by) {
    for (auto &ring : fill.rings)
        shift(ring, by);
}
void shift(Text &text, Vec2 by) {
    text.at = text.at + by;
}
void shift(Picture &picture, Vec2 by) {
    picture.box = picture.box.moved(by);
}
void shift(Link &link, Vec2 by) {
    link.box = link.box.moved(by);
}

Rect around(const std::vector<Vec2> &points) {
    Rect box = Rect::nothing();
    for (const Vec2 p : points)
        box = joined(box, p);
    return box;
}

Rect round(Vec2 centre, double radius) {
    return Rect{centre.x, centre.y, centre.x, centre.y}.grown(radius);
}

Rect cover(const Path &path) {
    return around(path.points);
}
Rect cover(const Circle &circle) {
    return round(circle.centre, circle.radius);
}
Rect cover(const Arc &arc) {
    return round(arc.centre, arc.radius);
}
Rect cover(const Text &text) {
    return box_of(text);
}
Rect cover(const Picture &picture) {
    return picture.box;
}
Rect cover(const Link &) {
    return Rect::nothing();
}
Rect cover(const Fill &fill) {
    Rect box = Rect::nothing();
    for (const auto &ring : fill.rings)
        box = joined(box, around(ring));
    return box;
}

} // namespace

Item moved(Item item, Vec2 by) {
    std::visit([&](auto &it) { shift(it, by); }, item);
    return item;
}

Block moved(Block block, Vec2 by) {
    block.room = block.room.moved(by);
    for (Item &item : block.items)
        std::visit([&](auto &it) { shift(it, by); }, item);
    return block;
}

Block placed(Block block, Vec2 lower_left) {
    const Vec2 by = lower_left - Vec2{block.room.x0, block.room.y0};
    return moved(std::move(block), by);
}

Rect bounds(const Item &item) {
    return std::visit([](const auto &it) { return cover(it); }, item);
}

Rect bounds(const std::vector<Item> &items) {
    Rect box = Rect::nothing();
    for (const Item &item : items)
        box = joined(box, bounds(item));
    return box;
}

} // namespace roundlay::sheets
