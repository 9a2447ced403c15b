#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/form/forms.h"
#include "exporters/sheets/form/proposed.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double tag_width = 30;
constexpr double row_height = print_line + box_height + print_line + 0.8;
constexpr double end_width = 3 * size_width;

/// What the record says of that timber, by its place in the plan; of one that was noted by its tag alone by
/// that.
const FoundLog *found_as(const Record &record, const std::string &tag) {
    auto log =
        std::ranges::find_if(record.logs, [&](const FoundLog &each) { return each.place.timber == tag; });
    if (log == record.logs.end()) log = std::ranges::find(record.logs, tag, &FoundLog::tag);
    return log == record.logs.end() ? nullptr : &*log;
}

/// A timber as the plan has it, and what the record says of a log of its tag.
class TimberRow {
  public:
    TimberRow(const Layout &layout, const Record &record, const FormLogs &logs, const Timber &timber)
        : layout_(layout), logs_(logs), timber_(timber), piece_(layout.pieces[timber.piece]),
          found_(found_as(record, piece_.tag)), tag_(found_ ? found_->tag : piece_.tag) {}

    double height(const Words &words, double width) const {
        return row_height + static_cast<double>(lines_over(words, width)) * print_line;
    }

    void draw(FormPen &pen, const Rect &whole) const {
        Rect room = whole;
        if (lines_over(pen.words(), whole.width()) > 0) {
            room = pen.tag(whole, tag_width - 2, tag_);
        } else {
            pen.print({room.x0, room.y1 - print_line}, tag_width - 2,
                      found_ ? pen.words().say("tag") : pen.words().say("tag, proposed"));
            pen.tag({room.x0, room.y0, room.x1, room.y1 - print_line}, tag_width - 2, tag_);
        }
        const double top = room.y1 - print_line, low = top - box_height;
        pen.print_right({room.x0 + tag_width - 1, low - print_line}, tag_width - 2,
                        pen.words().say("proposed"));
        double x = room.x0 + tag_width;
        for (const End end : {End::datum, End::far}) {
            draw_end(pen, x, top, end);
            x += end_width;
        }
        pen.print({x + 1, top}, room.x1 - x - 2, pen.words().say("condition, marks"));
        pen.box({x, low, room.x1, top}, words_box, "", {found_ ? found_->condition : "", ""});
    }

  private:
    std::size_t lines_over(const Words &words, double width) const {
        return FormPen::lines_over(words, tag_, tag_width - 2, width);
    }

    const FoundEnd *found_end(End end, const std::string &at) const {
        if (!found_) return nullptr;
        const auto named = std::ranges::find(found_->ends, at, &FoundEnd::corner);
        if (named != found_->ends.end()) return &*named;
        const std::size_t i = end == End::datum ? 0 : 1;
        return i < found_->ends.size() ? &found_->ends[i] : nullptr;
    }

    void draw_end(FormPen &pen, double x, double top, End end) const {
        const Words &words = pen.words();
        const std::string &at = end == End::datum ? piece_.datum.at : piece_.far.at;
        const FoundEnd *found = found_end(end, at);
        const ProposedEnd p = proposed_end(layout_, piece_, end);
        const double bearing = end == End::datum ? timber_.bearing_from : timber_.bearing_to;
        pen.print({x + 1, top}, end_width - 2, words.say("its end in %1", found ? found->corner : called(at)),
                  true);
        const auto box = [&](const char *letter, const Known &known) {
            pen.box({x, top - box_height, x + size_width, top}, size_box, letter, known);
            x += size_width;
        };
        box("a", known(found ? &found->height : nullptr, p.height, words));
        box("b", known(found ? &found->width : nullptr, p.width, words));
        box("j", {found ? found->note : "", words.length(bearing)});
    }

    /// A log that it lies in by the tag that it was found under.
    std::string called(const std::string &at) const {
        for (const auto i : layout_.pieces.indices())
            if (const Piece &piece = layout_.pieces[i]; piece.tag == at && !piece.timber)
                return form_tag(logs_.walls[piece.wall], i, layout_);
        return at;
    }

    const Layout &layout_;
    const FormLogs &logs_;
    const Timber &timber_;
    const Piece &piece_;
    const FoundLog *found_;
    std::string tag_; ///< that it was found under; else proposed
};

} // namespace

std::vector<Sheet> floor_form(const Draft &draft, const Record &record, Index<FloorPlace> floor) {
    const Words words = draft.words();
    const std::string &name = draft.layout.floors[floor].name;
    FormSheets sheets(
        draft, record,
        {words.say("Floor %1", name), words.say("joists and what their ends lie in"), "F-" + name,
         words.say("Field forms"), "form-floor:" + std::to_string(floor.number() + 1),
         words.say(
             "a height and b width of the joist at the face of what it lies in; j how deep its end lies in "
             "there: look into the socket, or feel with a wire.")});
    const FormLogs logs = form_logs(record, draft.layout);
    for (const Timber &timber : draft.layout.timbers) {
        if (timber.floor != floor) continue;
        const TimberRow row(draft.layout, record, logs, timber);
        const Rect room = sheets.strip(row.height(sheets.words(), sheets.room().width()));
        FormPen pen = sheets.pen();
        row.draw(pen, room);
    }
    return sheets.finished();
}

} // namespace roundlay::sheets
