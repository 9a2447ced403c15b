#include "exporters/sheets/form/corner_rows.h"
#include "exporters/sheets/form/forms.h"
#include "exporters/sheets/form/key_figure.h"
#include "exporters/sheets/form/sketch.h"
#include "kernel/survey/survey.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double sketched = 900;      ///< mm of each wall from the corner on
constexpr double tallest_sketch = 78; ///< on paper

const RecordedCorner *recorded_corner(const Record &record, const std::string &name) {
    const auto corner = std::ranges::find(record.corners, name, &RecordedCorner::name);
    return corner == record.corners.end() ? nullptr : &*corner;
}

class CornerForm {
  public:
    CornerForm(const Draft &draft, const Record &record, Index<CornerPlace> corner)
        : draft_(draft), record_(record), corner_(draft.layout.corners[corner]), index_(corner),
          name_(corner_name(record, draft.layout, corner_.name)), logs_(form_logs(record, draft.layout)),
          rows_(corner_rows(draft.layout, logs_, corner)), sheets_(draft, record, head()) {}

    std::vector<Sheet> draw() {
        add_first_sheet();
        const auto heading = [&](FormPen &pen, const Rect &room) { draw_corner_heading(pen, room); };
        for (const CornerRow &row : rows_) {
            const double height = corner_row_height(sheets_.words(), row, sheets_.room().width());
            const Rect room = sheets_.strip(height, heading, corner_heading_height);
            FormPen pen = sheets_.pen();
            draw_corner_row(pen, room, row);
        }
        return sheets_.finished();
    }

  private:
    const std::string &first() const { return draft_.layout.walls[corner_.ends].name; }
    const std::string &second() const { return draft_.layout.walls[corner_.starts].name; }

    FormHead head() const {
        const Words words = draft_.words();
        std::string letters = words.say(
            "Of the tail, or of the notch of a log that runs past: n at the shoulder on the outside "
            "face, p at its end there, q at the shoulder on the inside face, r at its end there; s "
            "overhang past the crossing wall; t gap under it. Of the corner: u height over the level "
            "plane, + up, - down, of a mark on its arris (a nail, or a line that stays); v and w how "
            "far the arris leans at the top, + out of the wall, - into it, on the faces of walls %1 "
            "and %2; x the height that this is measured over. What another log hides stays empty "
            "until it is open.",
            first(), second());
        if (std::ranges::any_of(rows_, [](const CornerRow &row) { return !row.end && !row.has_stations; }))
            letters += " " + words.say("Where a log runs on: y its height, z its width there.");
        return {words.say("Corner %1", name_),
                words.say("of walls %1 and %2", first(), second()),
                "F-" + name_,
                words.say("Field forms"),
                "form-corner:" + corner_.name,
                letters};
    }

    void add_first_sheet() {
        const Words &words = sheets_.words();
        const Rect boxes = sheets_.strip(print_line + box_height + print_line);
        FormPen pen = sheets_.pen();
        draw_arris_boxes(pen, boxes, recorded_corner(record_, name_), first(), second());
        Page page({boxes.x0, sheets_.room().y0, boxes.x1, boxes.y0});
        const Scale *scale = sketch_scale();
        for (const bool of_first : {true, false})
            if (scale) page.put(sketch(of_first, *scale));
        if (const auto told = told_best()) {
            const CornerRow &row = *told;
            page.put(key_of_end(draft_, row.piece, *row.end, words));
        }
        page.put(key_of_arris(words, first(), second()));
        for (Item &item : page.items())
            sheets_.items().push_back(std::move(item));
        sheets_.end_sheet();
    }

    /// The largest at which both walls find room over one another's tags.
    const Scale *sketch_scale() const {
        for (const Scale &scale : shell_scales(draft_.shell.units))
            if (draft_.layout.height * scale.ratio <= tallest_sketch) return &scale;
        return nullptr;
    }

    /// The end of a wall at the corner, from outside as the forms of both walls may be read from any side.
    Block sketch(bool of_first, const Scale &scale) const {
        const Index<WallPlace> wall = of_first ? corner_.ends : corner_.starts;
        const WallPlace &place = draft_.layout.walls[wall];
        const SeenShell seen = seen_wall(draft_.layout, draft_.bodies, wall, WallSide::outside);
        const SketchWanted wanted{draft_.shell, draft_.layout,   seen, logs_.walls[wall],
                                  record_,      sheets_.words(), wall, WallSide::outside};
        const WallStretch all = all_of(wanted);
        const auto meeting = std::ranges::find(place.meetings, index_, &WallMeeting::corner);
        const double at = meeting == place.meetings.end() ? 0 : meeting->x;
        const double from = std::max(all.from, at - sketched), to = std::min(all.to, at + sketched);
        const std::string caption = sheets_.words().say("Wall %1, %2", place.name, std::string(scale.words));
        return sketch_of(wanted, {from, to, from <= all.from, to >= all.to}, scale, caption).block;
    }

    /// An end in the corner that shows what is measured: one with a tail, in the midst of the wall.
    std::optional<CornerRow> told_best() const {
        std::vector<CornerRow> ends;
        for (const EndShape shape : {EndShape::tail, EndShape::round, EndShape::square}) {
            for (const CornerRow &row : rows_)
                if (row.end && row.proposed.shape == shape) ends.push_back(row);
            if (!ends.empty()) return ends[ends.size() / 2];
        }
        return {};
    }

    const Draft &draft_;
    const Record &record_;
    const CornerPlace &corner_;
    Index<CornerPlace> index_;
    std::string name_;
    FormLogs logs_;
    std::vector<CornerRow> rows_;
    FormSheets sheets_;
};

} // namespace

std::vector<Sheet> corner_form(const Draft &draft, const Record &record, Index<CornerPlace> corner) {
    return CornerForm(draft, record, corner).draw();
}

} // namespace roundlay::sheets
