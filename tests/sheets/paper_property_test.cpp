// The paper of random shells cuts their pieces again.
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "kernel/document/document.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/read_back.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <map>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

/// What random shells were read, and why some were not.
struct Tally {
    std::size_t shells = 0, pieces = 0;
    std::map<std::string, std::size_t> unread;

    std::size_t unread_pieces() const {
        std::size_t sum = 0;
        for (const auto &[why, count] : unread)
            sum += why.starts_with("shell: ") ? 0 : count;
        return sum;
    }
    std::string told() const {
        std::string text = std::to_string(shells) + " shells, " + std::to_string(pieces) + " pieces";
        for (const auto &[why, count] : unread)
            text += "\n" + std::to_string(count) + " " + why;
        return text;
    }
};

CutSheetOptions any_options() {
    CutSheetOptions options;
    options.paper = *rc::gen::element(Paper::a4, Paper::a3, Paper::letter, Paper::tabloid, Paper::a2);
    options.angle = *rc::gen::element(Angle::third, Angle::first);
    return options;
}

/// Holds some pieces against their sheets. Inside a property.
void read_some(const LaidShell &shell, const CutSheetOptions &options, Tally &tally) {
    ++tally.shells;
    if (shell.layout.models.empty()) {
        ++tally.unread["shell: cannot be built"];
        return;
    }
    for (int i = 0; i < 3; ++i) {
        const Index<Model> one(*rc::gen::inRange<std::size_t>(0, shell.layout.models.size()));
        const Model &model = shell.layout.models[one];
        const std::string &tag = shell.layout.pieces[model.pieces[0]].tag;
        std::string wrong;
        std::size_t sheets = 0;
        ++tally.pieces;
        try {
            wrong = read_back(shell, model, options, sheets);
        } catch (const std::runtime_error &cause) {
            ++tally.unread[cause.what()];
            continue;
        }
        if (!wrong.empty()) RC_FAIL(tag + ":" + wrong + "\n" + write_document(shell.shell));
    }
}

TEST_CASE("the paper of any shell cuts the same pieces again") {
    Tally tally;
    CHECK(test::counterexample(test::shells_to_draw(20), [&] {
              Shell shell = test::any_of_all_shells();
              shell.units = *rc::gen::element(UnitSystem::metric, UnitSystem::imperial);
              read_some(test::laid(shell), any_options(), tally);
          }) == "");
    INFO(tally.told());
    CHECK(tally.unread["shell: cannot be built"] * 4 <= 3 * tally.shells);
    // Where lines lead from numbers, words alone cannot place them: one piece in fifty, and two more, as a
    // run draws some fifty.
    CHECK(tally.unread_pieces() * 50 <= tally.pieces + 100);
}
