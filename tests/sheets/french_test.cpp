// Paper in French: nothing of it stays English, and the longer words find room.

#include "exporters/sheets/drawing/font.h"
#include "exporters/words/catalogue.h"
#include "tests/sheets/support/checks.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cctype>
#include <set>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

SheetOptions french_options(std::optional<Paper> paper) {
    SheetOptions options = full_options(paper);
    options.fields.language = Language::french;
    options.weight = [](const Piece &, const Body &body) {
        return std::optional<WeightNote>(WeightNote{body.volume * 6e-7, body.volume * 8e-7,
                                                    "pruche du Canada, vert.", 0, 0, 0, 0, "Pesez."});
    };
    return options;
}

/// Words of English that no French text has, names aside.
const std::set<std::string> &typical_english() {
    static const std::set<std::string> words = {
        "above",  "across", "alike",   "and",     "are",    "as",     "bearing", "bed",    "before", "blank",
        "bore",   "bores",  "bottom",  "butt",    "by",     "corner", "cut",     "cuts",   "deep",   "depth",
        "door",   "down",   "each",    "edge",    "end",    "ends",   "far",     "floor",  "for",    "from",
        "groove", "half",   "header",  "height",  "hole",   "in",     "inside",  "into",   "is",     "its",
        "joist",  "joists", "left",    "length",  "level",  "load",   "log",     "logs",   "lies",   "not",
        "notch",  "of",     "opening", "outside", "peg",    "pegs",   "piece",   "pieces", "pocket", "raise",
        "right",  "rise",   "rod",     "round",   "rounds", "scale",  "seam",    "seat",   "sheet",  "sheets",
        "side",   "sill",   "size",    "slant",   "slope",  "step",   "stick",   "tail",   "tag",    "tags",
        "that",   "the",    "through", "tip",     "to",     "top",    "under",   "up",     "wall",   "walls",
        "weight", "where",  "wide",    "width",   "window", "with"};
    return words;
}

void add_words(std::set<std::string> &all, const std::string &text) {
    std::string word;
    for (const char c : text + " ")
        if (std::isalpha(static_cast<unsigned char>(c)) != 0 ||
            (static_cast<unsigned char>(c) & 0x80U) != 0 ||
            c == '_') // a key of the document, live_load, is a word by itself
            word += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
        else if (!word.empty())
            all.insert(std::exchange(word, ""));
}

/// What the person called things: theirs in every language.
std::set<std::string> own_words(const Shell &shell) {
    std::set<std::string> words;
    add_words(words, shell.name);
    add_words(words, shell.state);
    for (const Opening &opening : shell.openings)
        add_words(words, opening.name);
    for (const StatedBore &bore : shell.bores)
        add_words(words, bore.name);
    for (const OwnLog &log : shell.own_logs)
        add_words(words, log.mark + " " + log.note);
    return words;
}

/// Each English word on a sheet, with where it stands.
std::string english_in(const Book &book, const Shell &shell) {
    const std::set<std::string> own = own_words(shell);
    std::string found;
    const auto look = [&](const std::string &text, const std::string &where) {
        std::set<std::string> words;
        add_words(words, text);
        for (const std::string &word : words)
            if (typical_english().contains(word) && !own.contains(word))
                found += where + ": " + word + " in \"" + text + "\"\n";
    };
    look(book.title + ". " + book.subject, "the book");
    for (const Sheet &sheet : book.sheets) {
        look(sheet.title + ". " + sheet.chapter, "a title");
        for (const Item &item : sheet.items)
            if (const Text *text = std::get_if<Text>(&item)) look(text->words, sheet.title);
    }
    return found;
}

/// What found no room and was cut short.
std::string cut_off_in(const Book &book) {
    std::string found;
    for (const Sheet &sheet : book.sheets)
        for (const Item &item : sheet.items)
            if (const Text *text = std::get_if<Text>(&item);
                text && text->role == Role::title && text->words.ends_with("…"))
                found += sheet.title + ": " + text->words + "\n";
    return found;
}

} // namespace

TEST_CASE("The demos on paper in French have no English word, and nothing runs into anything") {
    for (const std::string &name : all_demo_names)
        for (const Paper paper : {Paper::a4, Paper::a3, Paper::tabloid}) {
            if (name == "long-house" && paper != Paper::a3) continue;
            LaidShell shell = demo(name);
            if (paper == Paper::tabloid) shell.shell.units = UnitSystem::imperial;
            const Book book = whole_book(shell, french_options(paper), 12);
            INFO(name << " on " << name_of(paper));
            CHECK(english_in(book, shell.shell) == "");
            CHECK(all_clashes(book.sheets) == "");
            CHECK(cut_off_in(book) == "");
            CHECK(book.language == "fr");
        }
}

TEST_CASE("Cut sheets in French take hardly more paper than in English") {
    for (const std::string name : {"one-room", "ell-house"}) {
        const LaidShell shell = demo(name);
        SheetOptions french = french_options(Paper::a3), english = french;
        english.fields.language = Language::english;
        const auto sheets = [&shell](const SheetOptions &options) {
            const std::string chapter = words_for(shell.shell, shell.layout, options).say("Cut sheets");
            const Book book = whole_book(shell, options);
            return std::ranges::count(book.sheets, chapter, &Sheet::chapter);
        };
        const auto in_french = sheets(french), in_english = sheets(english);
        INFO(name << ": " << in_french << " and " << in_english);
        CHECK(in_english >= static_cast<std::ptrdiff_t>(shell.layout.models.size()));
        CHECK(static_cast<double>(in_french) <= 1.1 * static_cast<double>(in_english));
    }
}

TEST_CASE("Shells of every kind on paper in French have no English word, and nothing runs into anything") {
    constexpr Paper papers[] = {Paper::a4, Paper::a3, Paper::a2, Paper::letter, Paper::tabloid};
    CHECK(counterexample(shells_to_draw(16), [&] {
              LaidShell shell = laid(any_of_all_shells());
              RC_PRE(!shell.layout.pieces.empty());
              shell.shell.units = *rc::gen::arbitrary<bool>() ? UnitSystem::metric : UnitSystem::imperial;
              const Paper paper = papers[*rc::gen::inRange(0, 5)];
              const Book book = whole_book(shell, french_options(paper), 6);
              const std::string wrong = english_in(book, shell.shell) + all_clashes(book.sheets);
              if (!wrong.empty()) RC_FAIL(wrong);
          }) == "");
}

TEST_CASE("The font has every letter of every French text") {
    for (const auto &table : catalogue_of(Language::french))
        for (const Entry &entry : table) {
            INFO(entry.translated);
            CHECK(letters_missing(std::string(entry.translated)).empty());
        }
}

TEST_CASE("A name is told in French where the program gave it, and left alone where the person did") {
    Shell shell = plain_shell();
    shell.openings = {window("A", 1500, 600, 900, 900), window("C", 1500, 600, 900, 900)};
    shell.openings[1].name = "window 1 in wall B";
    const LaidShell made = laid(shell);
    const Words words = words_for(made.shell, made.layout, french_options({}));
    CHECK(words.name("window 1 in wall A") == "fenêtre 1 du mur A");
    CHECK(words.name("window 1 in wall B") == "window 1 in wall B");
    CHECK(words.name("nobody's") == "nobody's");
    const Words english = words_for(made.shell, made.layout, full_options());
    CHECK(english.name("window 1 in wall A") == "window 1 in wall A");
}
