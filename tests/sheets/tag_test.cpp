// Tags are read back by zbar (independent of libqrencode), the packing list by its cells.

#include "exporters/sheets/book/book.h"
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/drawing/block.h"
#include "exporters/sheets/elevation/elevation.h"
#include "exporters/sheets/pattern/templates.h"
#include "exporters/sheets/pdf/pdf.h"
#include "exporters/sheets/pole/story_pole.h"
#include "exporters/sheets/raising/raising.h"
#include "exporters/sheets/tag/label_stock.h"
#include "exporters/sheets/tag/qr.h"
#include "exporters/sheets/tag/tag_place.h"
#include "exporters/sheets/tag/tags.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/log.h"
#include "tests/sheets/support/run.h"
#include "tests/sheets/support/sets.h"
#include "tests/support/catch.h"
#include "tests/support/parts.h"
#include "tests/support/sheet_words.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <functional>
#include <set>
#include <sstream>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

std::set<std::string> read_codes(const std::string &pdf) {
    const Ran ran =
        run_on(pdf, "d=$(mktemp -d); pdftoppm -r 300 -gray -png % $d/p; zbarimg -q --nodbus --raw "
                    "-S*.enable=0 -Sqrcode.enable=1 $d/*.png; c=$?; rm -r $d; exit $c");
    REQUIRE(ran.code == 0);
    std::set<std::string> codes;
    std::istringstream lines(ran.out);
    for (std::string line; std::getline(lines, line);)
        codes.insert(line);
    return codes;
}

bool words_hold(const std::vector<Sheet> &sheets, const std::string &words) {
    return std::ranges::any_of(sheets, [&](const Sheet &sheet) {
        return std::ranges::any_of(sheet.items, [&](const Item &item) {
            const Text *text = std::get_if<Text>(&item);
            return text && text->words.find(words) != std::string::npos;
        });
    });
}

} // namespace

TEST_CASE("every tag's code is read from paper as tag, revision and hash") {
    const LaidShell shell = demo("one-room");
    SheetOptions options = full_options();
    options.fields.revision = "B";
    const auto sheets = tag_sheets({shell.shell, shell.layout, shell.bodies, options});
    CHECK(all_clashes(sheets) == "");
    Book book;
    book.created = 0;
    book.sheets = sheets;
    const auto codes = read_codes(write_pdf(book));
    std::set<std::string> wanted;
    for (const Piece &piece : shell.layout.pieces)
        wanted.insert(piece.tag + " r.B " + piece_hash(piece));
    CHECK(codes == wanted);
    CHECK(codes.size() == shell.layout.pieces.size());
}

TEST_CASE("tags, templates and full-size poles come on A4 or Letter, whichever goes with the stated paper") {
    const auto is_on = [](UnitSystem units, std::optional<Paper> stated, Paper wanted) {
        LaidShell shell = demo("one-room");
        shell.shell.units = units;
        SheetOptions options = full_options();
        options.paper = stated;
        std::vector<Sheet> all = tag_sheets({shell.shell, shell.layout, shell.bodies, options});
        for (const auto &more : {template_sheets(shell.shell, shell.layout, options),
                                 full_size_poles(shell.shell, shell.layout, options)})
            all.insert(all.end(), more.begin(), more.end());
        return std::ranges::all_of(all, [&](const Sheet &sheet) {
            return sheet.size == size_of(wanted) || sheet.size == turned(size_of(wanted));
        });
    };
    CHECK(is_on(UnitSystem::metric, {}, Paper::a4));
    CHECK(is_on(UnitSystem::imperial, {}, Paper::letter));
    CHECK(is_on(UnitSystem::imperial, Paper::a4, Paper::a4));
    CHECK(is_on(UnitSystem::imperial, Paper::a2, Paper::a4));
    CHECK(is_on(UnitSystem::metric, Paper::tabloid, Paper::letter));
}

TEST_CASE("codes are 25 mm or larger without their quiet zone, however long the tag") {
    for (const std::string &words : {std::string("A-01-1 12345678"), std::string(60, 'W')}) {
        const auto fill = qr_code(words, {0, 0, 34, 34});
        REQUIRE(fill);
        Rect dark = Rect::nothing();
        for (const auto &ring : fill->rings)
            for (const Vec2 p : ring)
                dark = joined(dark, p);
        CHECK(dark.width() >= 25);
        CHECK(dark.height() >= 25);
        CHECK(dark.width() == Approx(dark.height()));
    }
    CHECK_FALSE(qr_code(std::string(5000, 'W'), {0, 0, 34, 34}));
}

TEST_CASE("a tag of 40 letters and a name in another script still fit their tag") {
    Piece log = sample_log();
    log.tag = "North-Wing-of-the-Old-Barn-Wall-A-005-01";
    Layout layout = layout_of(log);
    layout.name =
        "\xE5\x8C\x97\xE7\xAA\x93 the long and winding name of a shell that nobody would ever choose";
    SheetOptions options = full_options();
    options.weight = {};
    const Shell none;
    const auto sheets = tag_sheets({none, layout, {}, options});
    REQUIRE(sheets.size() == 1);
    CHECK(all_clashes(sheets) == "");
    Book book;
    book.sheets = sheets;
    CHECK(read_codes(write_pdf(book)) == std::set<std::string>{log.tag + " " + piece_hash(log)});
}

TEST_CASE("the hash changes with every number of the piece and with nothing else") {
    const Piece log = sample_log();
    const std::string hash = piece_hash(log);
    CHECK(hash.size() == 8);
    Piece other = log;
    other.tag = "Z-99-9";
    other.raise = 7;
    CHECK(piece_hash(other) == hash);
    std::set<std::string> all{hash};
    const auto differs = [&](auto change) {
        Piece changed = log;
        change(changed);
        CHECK(all.insert(piece_hash(changed)).second);
    };
    differs([](Piece &p) { p.blank.length += 0.1; });
    differs([](Piece &p) { p.blank.width += 0.1; });
    differs([](Piece &p) { p.blank.height += 0.1; });
    for (std::size_t i = 0; i < log.cuts.size(); ++i) {
        differs([&](Piece &p) { p.cuts.erase(p.cuts.begin() + static_cast<std::ptrdiff_t>(i)); });
        if (std::holds_alternative<SeamCut>(log.cuts[i]))
            differs([&](Piece &p) { std::get<SeamCut>(p.cuts[i]).seam.offset += 0.1; });
        if (std::holds_alternative<Bore>(log.cuts[i]))
            differs([&](Piece &p) { std::get<Bore>(p.cuts[i]).x += 0.1; });
        if (std::holds_alternative<BoxCut>(log.cuts[i]))
            differs([&](Piece &p) { std::get<BoxCut>(p.cuts[i]).box.low.z += 0.1; });
    }
}

TEST_CASE("the packing list holds every log once, the last to be raised first") {
    const LaidShell shell = demo("one-room");
    std::vector<std::string> tags;
    std::set<std::string> known;
    for (const Piece &piece : shell.layout.pieces)
        known.insert(piece.tag);
    for (const Sheet &sheet : packing_list(shell.shell, shell.layout, shell.bodies, full_options()))
        for (const Item &item : sheet.items)
            if (const Text *text = std::get_if<Text>(&item); text && known.contains(text->words))
                tags.push_back(text->words);
    std::vector<const Piece *> wanted;
    for (const Piece &piece : shell.layout.pieces)
        wanted.push_back(&piece);
    std::sort(wanted.begin(), wanted.end(),
              [](const Piece *a, const Piece *b) { return a->raise > b->raise; });
    REQUIRE(tags.size() == wanted.size());
    for (std::size_t i = 0; i < tags.size(); ++i)
        CHECK(tags[i] == wanted[i]->tag);
}

namespace {

bool has(const std::string &all, const std::string &words) {
    return all.find(words) != std::string::npos;
}

} // namespace

TEST_CASE("sheets for taking down, loading, raising and cutting, tags and elevations tell what was found of "
          "a log") {
    const LaidShell shell = demo("one-room");
    const auto wall = *shell.layout.walls.indices().begin();
    for (const Paper paper : {Paper::a3, Paper::a4, Paper::letter}) {
        SheetOptions options = full_options(paper);
        options.found = Indexed<FoundNote, Piece>(shell.layout.pieces.size());
        const Index<Piece> piece = *shell.layout.pieces.indices().begin();
        options.found[piece] = {
            {"rotten at both ends", "peg broken at 1843 mm",
             "note: a long remark that somebody made of the log in the evening, with all that "
             "was thought of it by those who stood by, and what the owner said of its age"},
            "5 found, 1 broken"};
        const Draft draft{shell.shell, shell.layout, shell.bodies, options};
        SheetSet set{taking_down_subject(),
                     packing_subject(),
                     raising_subject(),
                     tag_subject(),
                     wall_subject(shell.layout, wall),
                     cut_sheet_subject(shell.layout, shell.layout.pieces[piece].model)};
        for (const Subject &subject : set) {
            const auto sheets = composed({subject}, draft);
            INFO(subject.about);
            CHECK(words_hold(sheets, "rotten"));
            CHECK(all_clashes(sheets) == "");
        }
        CHECK(words_hold(composed({taking_down_subject()}, draft), "5 found"));
    }
}

TEST_CASE("sheets of raising and taking down print what is done as done, and how far they are") {
    const LaidShell shell = demo("one-room");
    Record record;
    record.done = {{Deed::up, {shell.layout.pieces.front().tag}, "", "Saturday crew", "2 May", ""},
                   {Deed::down, {shell.layout.pieces.back().tag}, "", "", "", ""}};
    for (const Paper paper : {Paper::a3, Paper::a4, Paper::letter}) {
        SheetOptions options = full_options(paper);
        const Draft bare{shell.shell, shell.layout, shell.bodies, options};
        CHECK_FALSE(words_hold(composed({raising_subject()}, bare), "So far"));
        options.ticked = ticked_of(record, shell.layout, shell.shell.state);
        const Draft draft{shell.shell, shell.layout, shell.bodies, options};
        const auto up = composed({raising_subject()}, draft), down = composed({taking_down_subject()}, draft);
        CHECK(words_hold(up, "Up: 1 of"));
        CHECK(words_hold(up, "crew"));
        CHECK(words_hold(down, "Down: 1 of"));
        CHECK(words_hold(down, "\u2713"));
        CHECK(all_clashes(up) == "");
        CHECK(all_clashes(down) == "");
    }
}

TEST_CASE("a packing list of a wood that is not known has no weight, not one of nothing") {
    LaidShell shell = demo("one-room");
    shell.shell.wood.species = "driftwood";
    SheetOptions options = full_options();
    options.weight = [](const Piece &, const Body &) { return std::optional<WeightNote>(); };
    const std::string all = words_of(packing_list(shell.shell, shell.layout, shell.bodies, options));
    CHECK(has(all, "not known: no values are known of the wood"));
    CHECK_FALSE(has(all, "Weight, estimated"));
    CHECK_FALSE(has(all, " kg"));
    CHECK_FALSE(has(all, " lb"));
}

TEST_CASE("weights in the packing list carry their basis and their caution") {
    const LaidShell shell = demo("one-room");
    std::string all = words_of(packing_list(shell.shell, shell.layout, shell.bodies, full_options()));
    std::replace(all.begin(), all.end(), '\n', ' ');
    CHECK(has(all, "Wood Handbook"));
    CHECK(has(all, "no lift plan"));
    CHECK(has(all, "licensed professional"));
}

namespace {

LabelStock strips() {
    return {99.1, 38.1, 2, 7, 4.7, 15.1, 2.5, 0}; // 14 to a sheet of A4
}

std::string joined_words(const std::vector<Sheet> &sheets) {
    std::string all = words_of(sheets);
    std::replace(all.begin(), all.end(), '\n', ' ');
    return all;
}

const Piece &first_of(const LaidShell &shell, const std::function<bool(const Piece &)> &is) {
    const auto found = std::ranges::find_if(shell.layout.pieces, is);
    REQUIRE(found != shell.layout.pieces.end());
    return *found;
}

} // namespace

TEST_CASE("a tag is stapled where it neither hides in a joint nor lies at a frame") {
    const LaidShell shell = demo("ell-house");
    const Piece &joist = first_of(shell, [](const Piece &p) { return p.timber.has_value(); });
    const Piece &tailed =
        first_of(shell, [](const Piece &p) { return !p.timber && p.datum.kind == EndKind::corner; });
    const Piece &island = first_of(shell, [](const Piece &p) { return p.island; });
    CHECK(tag_face(joist, 95, 69) == TagFace::top);
    CHECK(tag_face(tailed, 95, 69) == TagFace::end_grain);
    CHECK(tag_face(tailed, tailed.blank.width + 1, 69) == TagFace::inside); // the tag is larger than the end
    CHECK(tag_face(island, 95, 69) == TagFace::inside);
    const Words words(UnitSystem::metric);
    for (const Piece &piece : shell.layout.pieces) {
        const std::string staple = staple_words(shell.layout, piece, tag_face(piece, 95, 69), words);
        CHECK(has(staple, piece.timber ? "top" : piece.datum.kind == EndKind::corner ? "end" : "inside"));
    }
}

TEST_CASE("a partition's tag names its faces by the quarters of the sky") {
    Shell plain = plain_shell();
    plain.partitions = {partition("P", "A", Length::mm(2500), "C")};
    const LaidShell shell = laid(plain);
    const Piece &log = first_of(shell, [](const Piece &p) { return p.tag.starts_with("P-"); });
    const Words words(UnitSystem::metric);
    const std::string staple = staple_words(shell.layout, log, TagFace::inside, words);
    CHECK((has(staple, "east") || has(staple, "west")));
    CHECK_FALSE(has(staple, "inside"));
}

TEST_CASE("tags have length, raise, weight with its caution, and the code that is on the cut sheet") {
    const LaidShell shell = demo("one-room");
    const SheetOptions options = full_options();
    const Draft draft{shell.shell, shell.layout, shell.bodies, options};
    const std::string all = joined_words(tag_sheets(draft));
    const Words words = draft.words();
    for (const auto i : shell.layout.pieces.indices()) {
        const Piece &piece = shell.layout.pieces[i];
        CHECK(has(all, piece_hash(piece)));
        CHECK(has(all, words.say("Length %1, raise %2", in_mm(piece.blank.length), piece.raise)));
        const std::string sheet = joined_words(composed(cut_sheet_subject(shell.layout, piece.model), draft));
        CHECK(has(sheet, piece_hash(piece)));
    }
    CHECK(has(all, "no lift plan"));
}

TEST_CASE("labels as they are bought take all tags whole, each in its own label, and codes are still read") {
    for (const std::string name : {"one-room", "ell-house", "round-cabin", "old-house"})
        for (const Language language : {Language::english, Language::french}) {
            INFO(name);
            LaidShell shell = demo(name);
            SheetOptions options = full_options(Paper::a4);
            options.fields.language = language;
            options.labels = strips();
            const Draft draft{shell.shell, shell.layout, shell.bodies, options};
            CHECK_FALSE(tag_fault(draft));
            const auto sheets = tag_sheets(draft);
            CHECK(sheets.size() == (shell.layout.pieces.size() + 13) / 14);
            CHECK(all_clashes(sheets) == "");
            for (const Item &item : sheets.front().items) {
                int held = 0;
                for (int i = 0; i < 14; ++i)
                    held +=
                        label_box(strips(), sheets.front().size, i).grown(0.01).holds(bounds(item)) ? 1 : 0;
                CHECK(held == 1);
            }
            if (name != "one-room") continue;
            Book book;
            book.created = 0, book.sheets = sheets;
            CHECK(read_codes(write_pdf(book)).size() == shell.layout.pieces.size());
        }
}

TEST_CASE("labels without room are refused with a size that does, which is tried") {
    for (const std::string name : {"one-room", "old-house"})
        for (const Language language : {Language::english, Language::french}) {
            const LaidShell shell = demo(name);
            SheetOptions options = full_options(Paper::a4);
            options.fields.language = language;
            options.labels = LabelStock{70, 37, 3, 8, 0, 0, 0, 0};
            const Draft draft{shell.shell, shell.layout, shell.bodies, options};
            const auto refused = tag_fault(draft);
            REQUIRE(refused);
            std::vector<double> lengths;
            for (const Amount &amount : refused->amounts)
                if (const auto *length = std::get_if<LengthAmount>(&amount.value()))
                    lengths.push_back(length->mm);
            REQUIRE(lengths.size() == 4);
            options.labels = LabelStock{lengths[2], lengths[3], 1, 1, 0, 0, 0, 0};
            CHECK_FALSE(tag_fault(draft));
        }
}

TEST_CASE("labels that are too small or do not lie on the paper are refused, and why is said") {
    const auto fault = [](LabelStock stock) {
        const auto said = label_fault(stock, size_of(Paper::a4));
        return said ? words_of(*said, in_english(UnitSystem::metric)) : std::string();
    };
    CHECK(fault(strips()).empty());
    LabelStock small = strips(), wide = strips(), none = strips();
    small.width = 60;
    wide.columns = 3;
    none.rows = 0;
    CHECK(has(fault(small), "labels of 60 mm by 38 mm have no room"));
    CHECK(has(fault(wide), "the paper has 210 mm by 297 mm"));
    CHECK(has(fault(none), "at least one"));
    LaidShell shell = demo("one-room");
    shell.layout.pieces.front().tag = "North-Wing-of-the-Old-Barn-Wall-A-005-01-and-more-of-it-to-no-end";
    SheetOptions options = full_options(Paper::a4);
    options.labels = LabelStock{88, 36, 2, 7, 5, 5, 0, 0};
    const auto no_room = tag_fault({shell.shell, shell.layout, shell.bodies, options});
    REQUIRE(no_room);
    CHECK(has(words_of(*no_room, in_english(UnitSystem::metric)), "no room for all"));
}
