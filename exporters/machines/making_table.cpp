#include "exporters/machines/making_table.h"

#include "exporters/machining/operation_words.h"
#include "kernel/trade/weight.h"

#include <algorithm>
#include <cmath>

namespace roundlay::machines {

namespace {

constexpr int hundredths = 2;

std::string words_of(Verdict verdict, const Voice &voice) {
    switch (verdict) {
    case Verdict::whole:
        return voice.say("makeable");
    case Verdict::by_hand:
        return voice.say("makeable with hand finishing");
    case Verdict::not_made:
        break;
    }
    return voice.say("not makeable");
}

/// Rounded up: wood that is left is never told as less.
Entry cubic_centimetres(double mm3) {
    constexpr double tenths = 100; // of a cm3, in mm3
    return number(std::ceil(mm3 / tenths - 1e-9) / 10, 1);
}

std::string operation_name(const machining::Operation &operation, const Voice &voice) {
    const std::string kind = machining::words_of(operation.kind, voice);
    return operation.mark.empty() ? kind : voice.say("%1 %2", kind, operation.mark); // "slot 1": not one slot
}

/// The whole log's reasons, then each operation's; of those that are alike the first stands for all.
std::vector<std::string> reasons(const ModelMaking &model, const Voice &voice) {
    std::vector<std::string> all, said;
    for (const Said &against : model.making.against)
        all.push_back(voice.words(against));
    for (std::size_t i = 0; i < model.making.operations.size(); ++i) {
        const auto &why = model.making.operations[i].why;
        if (!why) continue;
        const std::string words = voice.words(*why);
        if (std::ranges::find(said, words) != said.end()) continue;
        said.push_back(words);
        all.push_back(operation_name(model.list.operations[i], voice) + ": " + words);
    }
    return all;
}

std::string joined(const std::vector<std::string> &all) {
    std::string text;
    for (const std::string &each : all)
        text += (text.empty() ? "" : "; ") + each;
    return text;
}

std::string place(Vec3 p) {
    return number(p.x, hundredths).digits + " " + number(p.y, hundredths).digits + " " +
           number(p.z, hundredths).digits;
}

std::vector<Entry> operation_row(const ModelMaking &model, std::size_t at, const Voice &voice) {
    const machining::Operation &operation = model.list.operations[at];
    const OperationMaking &made = model.making.operations[at];
    const bool is_made = made.verdict != Verdict::not_made;
    std::string tool;
    if (made.from) tool = made.tool.empty() ? voice.say("saw") : made.tool;
    return {model.list.tag,
            number(static_cast<double>(at) + 1, 0),
            operation_name(operation, voice),
            words_of(made.verdict, voice),
            made.from ? machining::words_of(*made.from, voice) : std::string(),
            tool,
            is_made ? number(std::ceil(made.tilt * 10 - 1e-6) / 10, 1) : Entry(),
            made.why        ? voice.words(*made.why)
            : made.waved    ? voice.say("its bottom keeps the waves of the chain's nose, to be pared")
            : made.in_steps ? voice.say("its slopes stay in steps of %1, to be pared", in_mm(step_height))
                            : std::string(),
            is_made ? cubic_centimetres(made.left) : Entry()};
}

/// Under its operation, whose sum it is a part of.
std::vector<Entry> corner_row(const std::vector<Entry> &operation, const KeptCorner &kept,
                              const Voice &voice) {
    std::vector<Entry> row(operation.size(), std::string());
    std::copy_n(operation.begin(), 3, row.begin());
    row.push_back(cubic_centimetres(kept.volume));
    row.insert(row.end(), {place(kept.from), place(kept.to), number(kept.radius, hundredths)});
    row[7] = kept.radius > 0 ? voice.say("a corner keeps a radius of %1", finely_in_mm(kept.radius, 1))
                             : voice.say("a corner of less than a right angle stays full");
    return row;
}

} // namespace

Table making_table(const std::vector<ModelMaking> &makings, const std::map<std::string, Said> &help,
                   const Voice &voice) {
    Table table;
    table.columns = {{"tag", voice.say("Tag")},
                     {"pieces", voice.say("Pieces")},
                     {"verdict", voice.say("Verdict")},
                     {"setups_at_least", voice.say("Set-ups at least")},
                     {"left_cm3", voice.say("For the chisel, cm3")},
                     {"why", voice.say("Why not")},
                     {"change", voice.say("Tried, and would do")}};
    for (const ModelMaking &model : makings) {
        const auto change = help.find(model.list.tag);
        const bool is_made = model.making.verdict != Verdict::not_made; // else sums are of no whole piece
        table.rows.push_back(
            {model.list.tag, number(static_cast<double>(model.list.pieces.size()), 0),
             words_of(model.making.verdict, voice), is_made ? number(model.making.setups, 0) : Entry(),
             is_made ? cubic_centimetres(model.making.left) : Entry(), joined(reasons(model, voice)),
             change == help.end() ? std::string() : voice.words(change->second)});
    }
    return table;
}

Table operation_makings(const std::vector<ModelMaking> &makings, const Voice &voice) {
    Table table;
    table.columns = {{"tag", voice.say("Tag")},
                     {"operation", "#"},
                     {"what", voice.say("Operation")},
                     {"verdict", voice.say("Verdict")},
                     {"from", voice.say("From")},
                     {"tool", voice.say("Tool")},
                     {"tilt_deg", voice.say("Tilt")},
                     {"why", voice.say("Remark")},
                     {"left_cm3", voice.say("For the chisel, cm3")},
                     {"corner_cm3", voice.say("Of that in this corner")},
                     {"corner_from_mm", ""},
                     {"corner_to_mm", ""},
                     {"radius_mm", ""}};
    for (const ModelMaking &model : makings)
        for (std::size_t i = 0; i < model.list.operations.size(); ++i) {
            std::vector<Entry> row = operation_row(model, i, voice);
            std::vector<std::vector<Entry>> corners;
            for (const KeptCorner &kept : model.making.operations[i].kept)
                corners.push_back(corner_row(row, kept, voice));
            row.insert(row.end(), 4, Entry());
            table.rows.push_back(std::move(row));
            table.rows.insert(table.rows.end(), corners.begin(), corners.end());
        }
    return table;
}

std::string making_caution(const std::vector<ModelMaking> &makings, const Voice &voice) {
    std::string text =
        machining::caution(voice) + " " +
        voice.say("It asks what straight tools get to, by reach, shape and tilt; it knows nothing "
                  "of clamps, forces and of what a tool's holder meets beside the log.") +
        " " + voice.word(weight_caution);
    if (std::ranges::any_of(makings, [](const ModelMaking &model) { return !model.weighed; }))
        text +=
            " " + voice.say("The weight of some sticks is not known, and was not held against the machine.");
    return text;
}

} // namespace roundlay::machines
