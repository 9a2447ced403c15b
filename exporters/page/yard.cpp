#include "exporters/page/yard.h"

#include "exporters/lists/progress_words.h"
#include "exporters/page/labels.h"
#include "exporters/sheets/cut_sheet/warnings.h"
#include "exporters/sheets/frame/options.h"
#include "exporters/sheets/tag/tags.h"
#include "kernel/stock/taking_down.h"
#include "kernel/trade/weight.h"

#include <map>

namespace roundlay {

namespace {

constexpr int sides_of_a_bore = 12; // seen on a phone

class Teller {
  public:
    explicit Teller(const YardSource &source)
        : source_(source), words_(sheets::words_for(source.shell, source.layout, speaking(source))),
          voice_(source.list.voice),
          warnings_(sheets::warnings_by_model(source.findings, source.shell, source.layout,
                                              source.list.voice.language())) {}

    YardLog log(Index<Piece> index) const {
        const Piece &piece = source_.layout.pieces[index];
        YardLog log;
        log.tag = piece.tag;
        log.code = sheets::piece_hash(piece);
        log.model = piece.model;
        log.part = part_of(source_.layout, piece).number();
        log.frame = piece.frame;
        log.lines = lines_of(index);
        return log;
    }

    YardStep step(const UpStep &up, std::vector<Index<YardLog>> logs) const {
        const Lift lift = lift_of(source_.shell, source_.layout, source_.bodies, up.piece);
        YardStep step;
        step.lift = lift.known ? words_.weights(lift.low_kg, lift.high_kg) : words_.say("not known");
        if (logs.size() > 1) step.lift = words_.say("%1, with its new wood", step.lift);
        step.logs = std::move(logs);
        step.then = pegs(up);
        return step;
    }

  private:
    using Lines = std::vector<YardLine>;

    static sheets::SheetOptions speaking(const YardSource &source) {
        sheets::SheetOptions options;
        options.fields.language = source.list.voice.language();
        return options;
    }

    Lines lines_of(Index<Piece> index) const {
        const PieceRow &row = source_.list.pieces.at(index.at());
        Lines lines;
        add_size(lines, row);
        add_weight(lines, row.stick);
        add_wood(lines, row);
        for (const std::string &warning : warnings_[source_.layout.pieces[index].model])
            add(lines, words_.say("Warning"), warning);
        add_log(lines, row);
        add_neighbours(lines, row);
        add_alike(lines, index);
        add_ticks(lines, index);
        return lines;
    }

    static void add(Lines &lines, std::string name, std::string words) {
        if (!words.empty()) lines.push_back({std::move(name), std::move(words), {}});
    }
    static void add(Lines &lines, std::string name, const std::vector<std::string> &tags) {
        if (!tags.empty()) lines.push_back({std::move(name), {}, tags});
    }

    void add_size(Lines &lines, const PieceRow &row) const {
        const Blank &blank = row.stick.blank;
        add(lines, words_.say("Kind"), row.stick.kind);
        add(lines, words_.say("Blank: length, width, height"),
            voice_.length(blank.length) + " \u00D7 " + voice_.length(blank.width) + " \u00D7 " +
                voice_.length(blank.height));
    }

    /// No weight without its caution under it.
    void add_weight(Lines &lines, const Stick &stick) const {
        if (stick.high_kg <= 0) return add(lines, words_.say("Weight, estimated"), stick.weight_note);
        add(lines, words_.say("Weight, estimated"), words_.weights(stick.low_kg, stick.high_kg));
        add(lines, words_.say("Caution"), voice_.word(weight_caution));
    }

    void add_wood(Lines &lines, const PieceRow &row) const {
        const Stick &stick = row.stick;
        add(lines, words_.say("Wood"), stick.species);
        add(lines, words_.say("Finish"), row.finish);
        add(lines, words_.say("Finished volume"), words_.volume(stick.volume));
        if (stick.high_kg <= 0) return;
        if (stick.blank_high_kg > 0)
            add(lines, words_.say("Blank weighs, estimated"),
                words_.weights(stick.blank_low_kg, stick.blank_high_kg));
        if (stick.log_high_kg > 0)
            add(lines, words_.say("Round log weighs, estimated"),
                words_.weights(stick.log_low_kg, stick.log_high_kg));
        add(lines, words_.say("Weights rest on"), stick.weight_note);
    }

    void add_log(Lines &lines, const PieceRow &row) const {
        add(lines, words_.say("As found"), row.as_found);
        add(lines, words_.say("Pegs as found"), row.pegs_found);
        add(lines, words_.say("Mark on the log"), row.mark);
        if (row.bow > 0) add(lines, words_.say("Bow, as measured"), voice_.length(row.bow));
        add(lines, words_.say("Note"), row.note);
        add(lines, words_.say("Butt (thick end)"), row.butt_left ? words_.say("left") : words_.say("right"));
    }

    void add_neighbours(Lines &lines, const PieceRow &row) const {
        add(lines, words_.say("Left end"), row.left);
        add(lines, words_.say("Right end"), row.right);
        add(lines, words_.say("Above"), row.above);
        add(lines, words_.say("Below"), row.below);
        add(lines, words_.say("Notched on the left to"), row.at_left);
        add(lines, words_.say("Notched on the right to"), row.at_right);
        add(lines, words_.say("Raised as number"), std::to_string(row.raise));
    }

    void add_alike(Lines &lines, Index<Piece> index) const {
        std::vector<std::string> tags;
        for (const Index<Piece> other : source_.layout.models[source_.layout.pieces[index].model].pieces)
            if (other != index) tags.push_back(source_.layout.pieces[other].tag);
        add(lines, words_.say("Cut like"), tags);
    }

    void add_ticks(Lines &lines, Index<Piece> index) const {
        const Ticked &ticked = source_.ticked;
        if (ticked.ticks.empty()) return;
        const std::pair<Deed, std::string> deeds[] = {{Deed::down, words_.say("Down")},
                                                      {Deed::cut, words_.say("Joints cut")},
                                                      {Deed::checked, words_.say("Checked")},
                                                      {Deed::up, words_.say("Up")},
                                                      {Deed::pegged, words_.say("Pegged")}};
        for (const auto &[deed, name] : deeds)
            add(lines, name, tick_words(ticked.tick(index, deed), voice_));
    }

    /// By size; where each stands is on the sheet.
    std::string pegs(const UpStep &up) const {
        std::map<std::pair<std::string, std::string>, int> by_size;
        for (const Index<Peg> index : up.pegs) {
            const Peg &peg = source_.layout.pegs[index];
            ++by_size[{voice_.length(peg.diameter), voice_.length(peg.length)}];
        }
        std::string all;
        for (const auto &[size, count] : by_size)
            all += (all.empty() ? "" : "; ") +
                   words_.say("%1 {peg|pegs} of %2, %3 long", count, size.first, size.second);
        return all;
    }

    const YardSource &source_;
    sheets::Words words_;
    const Voice &voice_;
    Indexed<std::vector<std::string>, Model> warnings_;
};

/// New wood goes up in its log.
std::vector<YardStep> steps_of(const YardSource &source, const Teller &teller) {
    const Indexed<Piece> &pieces = source.layout.pieces;
    Indexed<std::vector<Index<YardLog>>, Piece> lifted(pieces.size());
    for (const Index<Piece> piece : pieces.indices())
        if (!pieces[piece].mends) lifted[piece].push_back(Index<YardLog>(piece.at()));
    for (const Index<Piece> piece : pieces.indices())
        if (pieces[piece].mends) lifted[*pieces[piece].mends].push_back(Index<YardLog>(piece.at()));
    std::vector<YardStep> steps;
    for (const UpStep &up : raising(source.layout))
        if (!pieces[up.piece].mends) steps.push_back(teller.step(up, lifted[up.piece]));
    return steps;
}

std::size_t steps_done(const std::vector<YardStep> &steps, const Ticked &ticked) {
    std::size_t done = 0;
    if (ticked.ticks.empty()) return done;
    while (done < steps.size() && ticked.is(Index<Piece>(steps[done].logs.front().at()), Deed::up))
        ++done;
    return done;
}

} // namespace

Yard yard_of(const YardSource &source) {
    const Voice &voice = source.list.voice;
    Yard yard;
    yard.language = tag_of(voice.language());
    yard.name = source.list.shell.empty() ? voice.say("Log shell") : source.list.shell;
    for (const auto part : parts_of(source.layout))
        yard.parts.push_back({voice.name(part_name(source.layout, part)), wall_colour(part.number())});
    const Teller teller(source);
    for (const Index<Piece> piece : source.layout.pieces.indices())
        yard.logs.push_back(teller.log(piece));
    yard.steps = steps_of(source, teller);
    yard.up = steps_done(yard.steps, source.ticked);
    yard.caution = order_caution(voice) + " " + voice.word(weight_caution);
    yard.labels = page_labels(voice, yard.steps.size());
    for (const Body &body : source.bodies)
        yard.meshes.push_back(mesh_of(body, {sides_of_a_bore}));
    yard.sheets = Indexed<std::shared_ptr<const std::vector<sheets::Sheet>>, Model>(yard.meshes.size());
    return yard;
}

} // namespace roundlay
