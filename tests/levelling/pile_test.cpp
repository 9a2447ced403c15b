#include "kernel/csv/csv_rows.h"
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/levelling/pile.h"
#include "kernel/shell/limits.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;

namespace {

template <typename Row> std::string problems_of(const CsvRead<Row> &read) {
    CHECK((read.rows.empty() || read.problems.empty()));
    std::string all;
    for (const CsvProblem &p : read.problems)
        all += std::to_string(p.line) + ": " + p.message + "\n";
    return all;
}

} // namespace

TEST_CASE("A pile is read whatever separates its columns and whatever order they are in") {
    for (const char *text : {"mark,length,butt_height,tip_height,butt_width\n7,6 m,260 mm,\"9 in\",\n",
                             "mark;tip_height;length;butt_height\r\n\r\n7; 9 in ;6000 mm;26 cm\r\n",
                             "\xef\xbb\xbfmark\tlength\tbutt_height\ttip_height\n 7\t6 m\t260 mm\t9\""}) {
        INFO(text);
        const auto read = read_pile(text);
        CHECK(problems_of(read).empty());
        REQUIRE(read.rows.size() == 1);
        CHECK(read.rows[0].mark == "7");
        CHECK(read.rows[0].length == 6000);
        CHECK(read.rows[0].butt_height == 260);
        CHECK(read.rows[0].tip_height == Approx(228.6));
        CHECK_FALSE(read.rows[0].butt_width);
    }
}

TEST_CASE("Quotes hold separators, line ends and quotes") {
    const CsvRows split = split_csv("a,\"b,\"\"c\"\"\nd\",e\nf,g,h\n", ',');
    CHECK(split.unclosed == 0);
    REQUIRE(split.rows.size() == 2);
    CHECK(split.rows[0].cells == std::vector<std::string>{"a", "b,\"c\"\nd", "e"});
    CHECK(split.rows[1].line == 3);
}

TEST_CASE("What spreadsheets write is read as it is meant") {
    for (const char *text :
         {"Mark,Length (mm),Butt Height [mm],TIP-HEIGHT mm,,Girth\n7,6000,260,228.6,,900\n", // capitals,
                                                                                             // units, columns
          "MARK;LENGTH m;butt height, cm;tip height in inches\n7;6,0;26,0;9\n",              // decimal commas
          "mark\tLength\tButt height\tTip height\n7\t6,0 m\t260 mm\t228,6 mm\n",
          "sep=;\nmark;length;butt_height;tip_height\n7;6 m;260 mm;9 in\n;;;\n",
          "Logs of the north yard,,,\n,,,\n# measured in May, \"by eye\n# "
          "again\nmark,length,butt_height,tip_height\n"
          "7,6 m,260 mm,9 in\n# 8,5 m,200 mm,9 in\n,,,\n",
          "mark,length,butt_height,tip_height\r7,\"6,00 m\",260 mm,9 in\r",
          "tip height;height butt;length;mark\n9 in;260 mm;6.000,00 mm;7\n"}) {
        INFO(text);
        const auto read = read_pile(text);
        CHECK(problems_of(read).empty());
        REQUIRE(read.rows.size() == 1);
        CHECK(read.rows[0].mark == "7");
        CHECK(read.rows[0].length == Approx(6000));
        CHECK(read.rows[0].butt_height == Approx(260));
        CHECK(read.rows[0].tip_height == Approx(228.6));
    }
}

TEST_CASE("Letters beyond ASCII come as UTF-8, as UTF-16 and as single bytes") {
    const std::string head = "mark;length;butt_height;tip_height\n";
    std::string wide = "\xff\xfe";
    for (const char c : head + "\xe4;6 m;8\xbd in;8 in\n")
        wide += c, wide += '\0'; // Latin-1 is the start of Unicode
    for (const std::string &text :
         {head + "\xc3\xa4;6 m;8\xc2\xbd in;8 in\n", head + "\xe4;6 m;8\xbd in;8 in\n", wide,
          "\xef\xbb\xbf" + head + "\xc3\xa4;6 m;8\xc2\xbd in;8 in\n"}) {
        const auto read = read_pile(text);
        CHECK(problems_of(read).empty());
        REQUIRE(read.rows.size() == 1);
        CHECK(read.rows[0].mark == "\xc3\xa4");
        CHECK(read.rows[0].butt_height == Approx(215.9));
    }
}

TEST_CASE("A comma or a point that can be read in two ways is asked about, and only then") {
    const auto height = [](const std::string &cell, const std::string &other = "9 in") {
        const auto read =
            read_record("wall;round;left height;right height\nA;1;" + cell + ";" + other + "\n");
        return read.rows.empty() ? problems_of(read) : std::to_string(*read.rows[0].left_height);
    };
    CHECK(height("225,5 mm") == "225.500000");
    CHECK(height("225,125 mm") == "225.125000"); // 225125 mm is no log
    CHECK(height("0,250 m") == "250.000000");
    CHECK(height("1.250 mm", "225,5 mm") == "1250.000000"); // 1.25 mm is none
    CHECK(height("1.250,5 mm") == "1250.500000");
    CHECK(height("1,250.5 mm") == "1250.500000");
    CHECK(height("225.5 mm", "225,5 mm") == "225.500000");
    const auto bow = read_record("wall;round;bow\nA;1;1,250 mm\n");
    CHECK(problems_of(bow) ==
          "2: bow \"1,250 mm\" can be read as 1.25 mm or as 1250 mm; write it without a comma or "
          "point, or with two digits behind it\n");
}

TEST_CASE("What is left out is told once") {
    const auto read =
        read_pile("the yard\nmark,girth,length,butt_height,tip_height,\n#1,1 m,6 m,260 mm,9 in,\n# x\n");
    CHECK(problems_of(read).empty());
    REQUIRE(read.rows.size() == 1);
    CHECK(read.rows[0].mark == "#1");
    REQUIRE(read.notices.size() == 3);
    CHECK(read.notices[0].message ==
          "left out, as they are not known here: the columns \"girth\"; known are mark, length, "
          "butt_height, tip_height, butt_width, tip_width");
    CHECK(read.notices[1].message == "left out above the header: line 1");
    CHECK(read.notices[2].message ==
          "taken for logs whose mark begins with #: line 3; a blank behind the # makes a comment "
          "of a line");
}

TEST_CASE("Each kind of thing wrong with a pile is told once, with its lines") {
    const std::string head = "mark,length,butt_height,tip_height\n";
    CHECK(problems_of(read_pile("")) == "1: there is no header line; expected the columns mark, length, "
                                        "butt_height, tip_height, butt_width, tip_width\n");
    CHECK(problems_of(read_pile("mark,length,girth\n")) ==
          "1: the column \"butt_height\" is missing\n1: the column \"tip_height\" is missing\n");
    CHECK(problems_of(read_pile(head)) == "1: there is no log under the header\n");
    std::string bare = head;
    for (int i = 0; i < 72; ++i)
        bare += std::to_string(i) + ",6 m,260,9 in\n";
    CHECK(problems_of(read_pile(bare)) == "2: butt_height \"260\" has no unit; write it behind the number, "
                                          "or once for all into the header: \"butt_height "
                                          "(mm)\"; so in 71 more lines: 3, 4, 5, 6, 7, 8, ...\n");
    CHECK(problems_of(read_pile(head + "a,6 m,26O mm,\n,-1 m,30 m,9 in\n")) ==
          "2: butt_height \"26O mm\" is no length: \"O\" is not a unit of length; expected mm, cm, m, in, "
          "ft, or the marks ' for feet "
          "and \" for inches\n"
          "2: tip_height is missing\n3: mark is missing; it is what tells one log from another\n3: length "
          "\"-1 m\" is out of bounds; expected a length from 300 mm to 30000 mm\n3: butt_height \"30 m\" is "
          "out of bounds; expected a length from 20 mm to 2000 mm\n");
    CHECK(problems_of(read_pile(head + "a,6 m,9 in,8 in\na,6 m,9 in,8 in\n")) ==
          "3: the log \"a\" stands there twice, first in line 2\n");
    CHECK(problems_of(read_pile(head + "\"a,6 m\n"))
              .starts_with("2: a quote that opens here is never closed\n"));
    CHECK(problems_of(read_pile(std::string("PK\0\3", 4))).starts_with("1: this is no text"));
}

TEST_CASE("A record takes all that was measured of a log") {
    const auto read = read_record(
        "Wall,Round,Piece,left_height,right_height,left_width,right_width,butt,Mark,fabric,Finish,"
        "bow,notes,diameter\n"
        "A,1,,230 mm,250 mm,200 mm,210 mm,,IV,Kept,sawn,12 mm,\"rot, outside\",30 cm\n"
        "A,2.0,2,,,,,Right,,,,,,\n");
    CHECK(problems_of(read).empty());
    REQUIRE(read.rows.size() == 2);
    const RecordedLog &log = read.rows[0];
    CHECK(log.mark == "IV");
    CHECK(log.left_height == 230);
    CHECK(log.right_width == 210);
    CHECK(log.bow == 12);
    CHECK(log.diameter == 300);
    CHECK(log.fabric == Fabric::kept);
    CHECK(log.finish == Finish::sawn);
    CHECK(log.note == "rot, outside");
    CHECK(read.rows[1].butt == LogEnd::right);
    CHECK(read.rows[1].piece == 2);
    CHECK(read.rows[1].line == 3);
}

TEST_CASE("A record takes as many logs over one another as a document does, and no more") {
    const std::string head = "wall,round,bow\n", most = std::to_string(most_logs_high),
                      more = std::to_string(most_logs_high + 1);
    CHECK(problems_of(read_record(head + "A," + most + ",9 mm\n")).empty());
    CHECK(problems_of(read_record(head + "A," + more + ",9 mm\n")) ==
          "2: round \"" + more + "\" is none; expected a whole number from 1 (the sill log) to " + most +
              "\n");
    Shell shell = test::plain_shell();
    shell.rounds = {.count = most_rounds, .height = {}, .pitch = shell.rounds.pitch, .gap = shell.rounds.gap};
    int high = 0;
    const Layout layout = lay_out(shell);
    CHECK_FALSE(has_errors(layout.findings));
    for (const Piece &piece : layout.pieces)
        high = std::max(high, piece.round);
    CHECK(high == most_logs_high);
    const auto stated = [&](const std::string &logs) {
        return read_document(write_document(shell) + "[[log]]\nwall = \"B\"\nround = " + logs + "\n", "x");
    };
    CHECK(stated(most).problems.empty());
    CHECK(stated(more).problems.size() == 1);
    shell.rounds.count = most_rounds + 1;
    CHECK(has_errors(lay_out(shell).findings));
    CHECK_FALSE(read_document(write_document(shell), "x").shell.has_value());
}

TEST_CASE("A record may be kept in French, the unit and the words of its cells too") {
    // The words that the window shows in French for the same things.
    const auto read = read_record(
        "Mur;Rang;Pièce;Hauteur gauche (mm);HAUTEUR DU BOUT DROIT en mm;Diamètre;Gros bout;Cintrage "
        "(mm);Façon;État;Marque sur la pièce;Notes\n"
        "A;2;1;235,5;240;;à gauche;8,5;équarrie;conservée;VI;pourri\n");
    CHECK(problems_of(read) == "");
    CHECK(read.notices.empty());
    REQUIRE(read.rows.size() == 1);
    const RecordedLog &log = read.rows[0];
    CHECK(log.wall == "A");
    CHECK(log.round == 2);
    CHECK(log.piece == 1);
    CHECK(log.left_height == 235.5);
    CHECK(log.right_height == 240);
    CHECK(log.bow == 8.5);
    CHECK(log.butt == LogEnd::left);
    CHECK(log.finish == Finish::hewn);
    CHECK(log.fabric == Fabric::kept);
    CHECK(log.mark == "VI");
    CHECK(log.note == "pourri");
    const auto pile = read_pile("marque\tlongueur\thauteur au gros bout\thauteur au petit bout\n"
                                "a\t6,2 m\t240 mm\t220 mm\n");
    REQUIRE(pile.rows.size() == 1);
    CHECK(pile.rows[0].butt_height == 240);
    CHECK(pile.rows[0].tip_height == 220);
}

TEST_CASE("Where no column is known the separator is found all the same, and each column is told") {
    for (const char separator : {',', ';', '\t'}) {
        std::string csv = "Muro;Giro;Alto izquierdo\nA;1;235 mm\n";
        std::ranges::replace(csv, ';', separator);
        const auto read = read_record(csv);
        CHECK(problems_of(read) == "1: the column \"wall\" is missing\n1: the column \"round\" is missing\n");
        REQUIRE(read.notices.size() == 1);
        CHECK_THAT(read.notices[0].message, ContainsSubstring("\"Muro\"") &&
                                                ContainsSubstring(", \"Giro\"") &&
                                                ContainsSubstring(", \"Alto izquierdo\";"));
    }
    const auto commas = read_record("Record\nMuro;Giro;Alto;Ancho\nA;1;235,5;180,5\n");
    REQUIRE(commas.notices.size() >= 1);
    CHECK_THAT(commas.notices[0].message, ContainsSubstring("\"Giro\", \"Alto\""));
    const auto slip = read_record("wall;roound;bow\nA;1;9 mm\n");
    CHECK_THAT(slip.notices.at(0).message, ContainsSubstring("\"roound\" (did you mean \"round\"?)"));
}

TEST_CASE("What is absurd in a record is told") {
    const std::string head = "wall,round,left_height,right_height,butt\n";
    CHECK(problems_of(read_record(head + "A,0,1 m,1 m,up\nA,x,3 m,1 m,left\n,2,1 m,,\n")) ==
          "2: round \"0\" is none; expected a whole number from 1 (the sill log) to 201; so in 1 more line: "
          "3\n2: butt \"up\" is "
          "not known; "
          "expected left, right\n3: left_height \"3 m\" is out of bounds; expected a length from 20 mm to "
          "2000 mm\n"
          "4: wall is missing\n4: right_height is missing\n");
    CHECK(problems_of(read_record(head + "B,1,1 m,1 m,\nB,1,1 m,1 m,\n")) ==
          "3: wall B, round 1 stands there twice, first in line 2\n");
}

TEST_CASE("A value beyond the header's columns is told and not lost") {
    const std::string head = "mur;rang;marque;notes\n";
    CHECK(
        problems_of(read_record(head + "A;1;I;clou forgé; à garder\nA;2;II;pourri;x\n")) ==
        "2: \"à garder\" stands beyond the last column that the header has; a value with a semicolon in it "
        "stands in quotes: \"clou forgé; à garder\"; what is a value of its own needs a column; so in 1 more "
        "line: 3\n");
    CHECK(read_record(head + "A;1;I;\"clou forgé; à garder\"\n").rows.at(0).note == "clou forgé; à garder");
    CHECK(problems_of(read_record(head + "A;1;I;pourri;;; \n")).empty());
    CHECK(problems_of(read_record("wall;round;bow;;\nA;1;9 mm;;oubli\n"))
              .starts_with("2: \"oubli\" stands beyond"));
    // Beside it the row's other problems are told all the same.
    CHECK(problems_of(read_record("wall,round,left_height,right_height\nA,1,1 m,1 m,oubli\nB,0,1 m,1 m\n"))
              .find("3: round \"0\" is none") != std::string::npos);
    const auto nameless = read_record("wall,,round\nA,oubli,1\nB,,1\n");
    CHECK(nameless.problems.empty());
    REQUIRE(nameless.notices.size() == 1);
    CHECK(nameless.notices[0].message ==
          "left out: column 2, which has no name; in line 2 it holds \"oubli\"");
}

TEST_CASE("A decimal comma that parts a value between commas is told") {
    const std::string head = "wall,round,left_height (mm),right_height (mm)\n";
    CHECK_THAT(
        problems_of(read_record(head + "A,1,250,5,240\n")),
        ContainsSubstring("a value with a comma (a decimal one too) in it stands in quotes: \"250,5\""));
    CHECK(read_record(head + "A,1,\"250,5\",240\n").rows.at(0).left_height == 250.5);
    CHECK_THAT(problems_of(read_record(head + "A,1,250,5\n")),
               ContainsSubstring("if \"250,5\" is one value, it stands in quotes"));
}

TEST_CASE("What stands behind a closing quote stays in the cell") {
    CHECK(split_csv("\"a\" b;c\n", ';').rows.at(0).cells == std::vector<std::string>{"\"a\" b", "c"});
    CHECK(split_csv("\"a\" ;c\n", ';').rows.at(0).cells == std::vector<std::string>{"a", "c"});
}

TEST_CASE("A record in French is told in its own names for columns and their words") {
    const std::string head = "mur;rang;hauteur gauche (mm);Hauteur droite (mm);état;façon;gros bout\n";
    CHECK(problems_of(read_record(head + "A;1;250;;ruiné;poli;en haut\n;x;250;9;;;\n")) ==
          "2: Hauteur droite is missing\n2: gros bout \"en haut\" is not known; expected gauche, droite\n"
          "2: façon \"poli\" is not known; expected équarri, scié, écorcé\n"
          "2: état \"ruiné\" is not known; expected neuf, conservé, réparé, remplacement\n"
          "3: mur is missing\n3: rang \"x\" is none; expected a whole number from 1 (the sill log) to 201\n"
          "3: Hauteur droite \"9\" is out of bounds; expected a length from 20 mm to 2000 mm\n");
    const auto patched = read_record(head + "A;1;250;240;rapiécé;;\nB;1;250;240;Rapiécée;;\n");
    CHECK(problems_of(patched).empty());
    CHECK(patched.rows.at(0).fabric == Fabric::patched);
    CHECK(patched.rows.at(1).fabric == Fabric::patched);
    CHECK(problems_of(read_pile("marque;longueur;largeur au gros bout\n")) ==
          "1: the column \"hauteur au gros bout\" is missing\n1: the column \"hauteur au petit bout\" is "
          "missing\n");
    CHECK_THAT(read_record("mur;rang;hauteurs gauche\nA;1;\n").notices.at(0).message,
               ContainsSubstring("did you mean \"hauteur gauche\"?"));
    // One name in French does not make a French file.
    CHECK(problems_of(read_record("wall,round,note,left_height\nA,1,,1 m\n")) ==
          "2: right_height is missing\n");
}
