#include "exporters/report/marks.h"

#include "exporters/sheets/drawing/text.h"
#include "kernel/record/found_words.h"

#include <array>

namespace roundlay::sheets {

namespace {

constexpr double box_width = 9, box_height = 5.5, row_height = 7.5;

constexpr std::array all_decisions{Decision::keep,          Decision::mend,    Decision::turn,
                                   Decision::use_elsewhere, Decision::replace, Decision::leave_out};
constexpr std::array all_wood{Soundness::checked, Soundness::soft, Soundness::rotten, Soundness::missing};
constexpr std::array all_changes{PieceChange::added,   PieceChange::gone,     PieceChange::longer,
                                 PieceChange::shorter, PieceChange::recut,    PieceChange::moved,
                                 PieceChange::retold,  PieceChange::unchanged};
constexpr std::array all_pegs{PegState::found, PegState::missing, PegState::broken, PegState::sawn};

/// Puts things with their meanings side by side, in as many rows as they take.
class KeyRows {
  public:
    explicit KeyRows(double width) : width_(width) {}

    /// Where the next thing stands, its lower left corner; `words` come to stand beside it.
    Vec2 next(const std::string &words) {
        const double takes = box_width + 1.5 + text_width(words, least_lettering) + 6;
        if (x_ > 0 && x_ + takes > width_) x_ = 0, y_ -= row_height;
        const Vec2 at{x_, y_};
        items_.emplace_back(
            lettered(words, {x_ + box_width + 1.5, y_ + 1.5}, least_lettering, false, Role::note));
        x_ += takes;
        return at;
    }
    std::vector<Item> &items() { return items_; }
    Block block() && { return {bounds(items_).grown(0.5), std::move(items_)}; }

  private:
    double width_, x_ = 0, y_ = 0;
    std::vector<Item> items_;
};

/// The first letter of its word, or another one of it: in a key no letter stands twice.
std::string letter(const Words &words, const char *english, const char *french) {
    return words.language() == Language::french ? french : english;
}

} // namespace

MarkOf mark_of(std::optional<Decision> decision, const Words &words) {
    if (!decision) return {Hatch::dotted, "?", words.say("not decided")};
    const std::string word = words.words(said_of(*decision));
    switch (*decision) {
    case Decision::keep:
        return {Hatch::none, letter(words, "K", "G"), word};
    case Decision::mend:
        return {Hatch::rising, letter(words, "M", "R"), word};
    case Decision::replace:
        return {Hatch::crossed, letter(words, "R", "N"), word};
    case Decision::turn:
        return {Hatch::level, letter(words, "T", "B"), word};
    case Decision::use_elsewhere:
        return {Hatch::upright, letter(words, "E", "A"), word};
    case Decision::leave_out:
        break;
    }
    return {Hatch::dense, letter(words, "L", "X"), word};
}

MarkOf mark_of_unrecorded(const Words &words) {
    return {Hatch::falling, "-", words.say("not recorded")};
}

MarkOf mark_of(Soundness wood, const Words &words) {
    const std::string word = words.words(said_of(wood));
    switch (wood) {
    case Soundness::sound:
        return {Hatch::none, "S", word};
    case Soundness::checked:
        return {Hatch::level, letter(words, "C", "F"), word};
    case Soundness::soft:
        return {Hatch::dotted, letter(words, "F", "M"), word};
    case Soundness::rotten:
        return {Hatch::crossed, letter(words, "R", "P"), word};
    case Soundness::missing:
        break;
    }
    return {Hatch::falling, letter(words, "M", "X"), word};
}

MarkOf mark_of(PieceChange change, const Words &words) {
    switch (change) {
    case PieceChange::unchanged:
        return {Hatch::none, "=", words.say("unchanged")};
    case PieceChange::added:
        return {Hatch::dense, "N", words.say("new")};
    case PieceChange::gone:
        return {Hatch::crossed, letter(words, "G", "D"), words.say("gone")};
    case PieceChange::longer:
        return {Hatch::rising, "+", words.say("longer")};
    case PieceChange::shorter:
        return {Hatch::falling, "-", words.say("shorter")};
    case PieceChange::recut:
        return {Hatch::dotted, letter(words, "C", "T"), words.say("re-cut")};
    case PieceChange::moved:
        return {Hatch::upright, letter(words, "V", "P"), words.say("moved")};
    case PieceChange::retold:
        break;
    }
    return {Hatch::level, "F", words.say("finish or note")};
}

MarkOf mark_of_peg(PegState state, const Words &words) {
    switch (state) {
    case PegState::found:
        return {Hatch::none, "", words.say("peg found")};
    case PegState::missing:
        return {Hatch::none, "", words.say("peg missing")};
    case PegState::broken:
        return {Hatch::none, "", words.say("peg broken")};
    case PegState::sawn:
        break;
    }
    return {Hatch::none, "", words.say("peg sawn off")};
}

std::vector<MarkOf> decision_marks(const Words &words) {
    std::vector<MarkOf> marks;
    for (const Decision decision : all_decisions)
        marks.push_back(mark_of(decision, words));
    marks.push_back(mark_of(std::optional<Decision>(), words));
    marks.push_back(mark_of_unrecorded(words));
    return marks;
}

std::vector<MarkOf> wood_marks(const Words &words) {
    std::vector<MarkOf> marks;
    for (const Soundness wood : all_wood)
        marks.push_back(mark_of(wood, words));
    return marks;
}

std::vector<MarkOf> change_marks(const Words &words) {
    std::vector<MarkOf> marks;
    for (const PieceChange change : all_changes)
        marks.push_back(mark_of(change, words));
    return marks;
}

Block key_of(const std::vector<MarkOf> &marks, double width) {
    KeyRows rows(width);
    for (const MarkOf &mark : marks) {
        const Vec2 at = rows.next(mark.meaning);
        const std::vector<Vec2> box{
            at, {at.x + box_width, at.y}, {at.x + box_width, at.y + box_height}, {at.x, at.y + box_height}};
        Text letter = lettered(mark.letter, {at.x + box_width / 2, at.y + box_height / 2}, least_lettering,
                               true, Role::mark);
        letter.across = Across::middle, letter.upright = Upright::middle;
        const std::vector<Rect> clear{box_of(letter).grown(0.4)};
        for (Item &item : hatched(box, mark.hatch, mark.letter.empty() ? std::vector<Rect>{} : clear))
            rows.items().push_back(std::move(item));
        rows.items().emplace_back(Path{box, true, Line::visible, ""});
        if (!mark.letter.empty()) rows.items().emplace_back(letter);
    }
    return std::move(rows).block();
}

std::vector<Item> peg_symbol(PegState state, Vec2 at) {
    constexpr double radius = 0.8;
    const auto bar = [&](Vec2 way) {
        return Path{{at - radius * way, at + radius * way}, false, Line::visible, ""};
    };
    if (state == PegState::broken) return {bar({1, 1}), bar({1, -1})};
    std::vector<Item> items{Circle{at, radius, Line::visible, ""}};
    if (state == PegState::found) items.emplace_back(Circle{at, radius / 2, Line::visible, ""});
    if (state == PegState::sawn) items.emplace_back(bar({1, 0}));
    return items;
}

std::vector<Item> later_cut_symbol(Vec2 at) {
    constexpr double tall = 2, wide = 1;
    return {Path{{{at.x - wide, at.y + tall}, at, {at.x + wide, at.y + tall}}, false, Line::visible, ""}};
}

Block key_of_symbols(const Words &words, double width) {
    KeyRows rows(width);
    const auto add = [&](const std::string &meaning, const auto &symbol) {
        const Vec2 at = rows.next(meaning);
        for (Item &item : symbol(Vec2{at.x + box_width / 2, at.y + box_height / 2 - 0.5}))
            rows.items().push_back(std::move(item));
    };
    for (const PegState state : all_pegs)
        add(mark_of_peg(state, words).meaning, [&](Vec2 at) { return peg_symbol(state, at); });
    add(words.say("cut later"), [](Vec2 at) { return later_cut_symbol(at); });
    return std::move(rows).block();
}

} // namespace roundlay::sheets
