// Each error that a statement can have, table by table: the one problem that follows, its words and its
// place.
#include "tests/document/problem_rows.h"
#include "tests/support/catch.h"

using namespace roundlay;
using namespace roundlay::test;

TEST_CASE("Every error of the version and of [shell] is reported at its place") {
    check_errors({
        {1, "", 1, 1, "\"roundlay\" is missing"},
        {1, "roundlay = \"1\"", 1, 12, "\"roundlay\" cannot be a text"},
        {1, "roundlay = 0", 1, 12, "\"roundlay\" is out of bounds"},
        {1, "roundlay = 2", 1, 12,
         "the document is written in version 2 of the format, which is newer than this program"},
        {2, "[[shell]]", 2, 1, "\"shell\" is stated once in a document"},
        {3, "", 2, 1, "\"thickness\" is missing in [shell]"},
        {3, "thickness = 8", 3, 13, "\"thickness\" cannot be a number"},
        {3, "thickness = nan", 3, 13, "\"thickness\" cannot be a number"},
        {3, "thickness = true", 3, 13, "\"thickness\" cannot be true or false"},
        {3, "thickness = [\"8 in\"]", 3, 13, "\"thickness\" cannot be a list"},
        {3, "thickness = {a = 1}", 3, 13, "\"thickness\" cannot be a table"},
        {3, "thickness = 1979-05-27", 3, 13, "\"thickness\" cannot be a date or time"},
        {3, "thickness = 0", 3, 13, "\"thickness\" is out of bounds"},
        {3, "thickness = \"-8 in\"", 3, 13, "\"thickness\" is out of bounds"},
        {3, "thickness = \"3 m\"", 3, 13, "\"thickness\" is out of bounds"},
        {3, "thickness = \"8\"", 3, 14, "\"thickness\": the number has no unit"},
        {3, "thickness = \"8 yards\"", 3, 16, "\"thickness\": \"yards\" is not a unit of length"},
        {3, "thickness = \"\xc2\xbd yards\"", 3, 16, "\"thickness\": \"yards\" is not a unit of length"},
        {3, "thickness = '8 yards'", 3, 16, "\"thickness\": \"yards\" is not a unit of length"},
        {3, "thickness = '''8 yards'''", 3, 13, "\"thickness\": \"yards\" is not a unit of length"},
        {3, "thickness = \"\\u0038 yards\"", 3, 13, "\"thickness\": \"yards\" is not a unit of length"},
        {3, "thickness = \"nan\"", 3, 14, "\"thickness\": \"nan\" stands where a number should"},
        {3, "thickness = \"\"", 3, 14, "\"thickness\": the length is empty"},
        {3, "units = 1\nthickness = \"8 in\"", 3, 9, "\"units\" cannot be a number"},
        {3, "units = \"inches\"\nthickness = \"8 in\"", 3, 9, "\"units\" cannot be \"inches\""},
        {3, "units = \"metrik\"\nthickness = \"8 in\"", 3, 9,
         "\"units\" cannot be \"metrik\" (did you mean \"metric\"?)"},
        {3, "name = 3\nthickness = \"8 in\"", 3, 8, "\"name\" cannot be a number"},
        {3, "name = \"a\\u0000b\"\nthickness = \"8 in\"", 3, 8, "\"name\" has a control character in it"},
    });
}

TEST_CASE("Every error of a wall or a partition is reported at its place") {
    check_errors({
        {6, "", 4, 1, "\"toward\" is missing in this [[wall]]"},
        {6, "toward = 90", 6, 10, "\"toward\" cannot be a number"},
        {6, "toward = \"up\"", 6, 10, "\"toward\" cannot be \"up\""},
        {7, "length = \"10000 m\"", 7, 10, "\"length\" of wall \"A\" is out of bounds"},
        {7, "length = \"0 mm\"", 7, 10, "\"length\" of wall \"A\" is out of bounds"},
        {7, "length = \"16 ft\"\nthickness = \"0 in\"", 8, 13,
         "\"thickness\" of wall \"A\" is out of bounds"},
        {7, "length = \"16 ft\"\npitch = \"0 in\"", 8, 9, "\"pitch\" of wall \"A\" is out of bounds"},
        {7, "length = \"16 ft\"\nlog_height = \"0 in\"", 8, 14,
         "\"log_height\" of wall \"A\" is out of bounds"},
        {13, "name = \"a\"", 13, 8, "the name \"a\" is taken; the other one stands in line 5"},
        {13, "name = \"C-1\"", 13, 8, "\"name\" of a wall cannot be \"C-1\""},
        {13, "name = \"\"", 13, 8, "\"name\" of a wall cannot be \"\""},
        {13, "name = \"ABCDEFGHI\"", 13, 8, "\"name\" of a wall cannot be \"ABCDEFGHI\""},
        {13, "", 12, 1, "\"name\" is missing in this [[wall]]"},
        {27, "[[partition]]\nname = \"P\"\nfrom = \"A\"\nfrom_left = \"1 m\"\nto = \"X\"\n[[opening]]", 31, 6,
         "there is no wall \"X\""},
        {27, "[[partition]]\nname = \"P\"\nfrom = \"A\"\nfrom_left = \"1 m\"\nto = \"A\"\n[[opening]]", 31, 6,
         "partition \"P\" cannot end in wall \"A\""},
        {27, "[[partition]]\nname = \"a\"\nfrom = \"A\"\nfrom_left = \"1 m\"\nto = \"C\"\n[[opening]]", 28, 8,
         "the name \"a\" is taken; the other one stands in line 5"},
        {27, "[[partition]]\nname = \"P\"\nfrom = \"A\"\nto = \"C\"\n[[opening]]", 27, 1,
         "\"from_left\" is missing in this [[partition]]"},
        {27,
         "[[partition]]\nname = \"P\"\nfrom = \"A\"\nfrom_left = \"1 m\"\nto = \"C\"\ntoward = "
         "\"up\"\n[[opening]]",
         32, 10, "\"toward\" cannot be \"up\""},
    });
}

TEST_CASE("Every error of [rounds] is reported at its place") {
    check_errors({
        {20, "[[rounds]]", 20, 1, "\"rounds\" is stated once in a document"},
        {21, "count = 5\nheight = \"4 ft\"", 20, 1,
         "[rounds] states count, height and pitch, which may contradict each other"},
        {21, "", 20, 1, "[rounds] states only one of count, height and pitch"},
        {21, "count = 5.0", 21, 9, "\"count\" has a decimal point"},
        {21, "count = \"5\"", 21, 9, "\"count\" cannot be a text"},
        {21, "count = 0", 21, 9, "\"count\" is out of bounds"},
        {21, "count = 501", 21, 9, "\"count\" is out of bounds"},
        {22, "pitch = \"0 in\"", 22, 9, "\"pitch\" is out of bounds"},
        {22, "height = \"101 m\"", 22, 10, "\"height\" is out of bounds"},
        {22, "pitch = \"9 in\"\ngap = \"-1 in\"", 23, 7, "\"gap\" is out of bounds"},
        {22, "pitch = \"9 in\"\nfull_first = \"E\"", 23, 14, "there is no wall \"E\""},
        {22, "pitch = \"9 in\"\nfull_first = \"a\"", 23, 14, "there is no wall \"a\" (did you mean \"A\"?)"},
        {22, "pitch = \"9 in\"\ntop = \"flat\"", 23, 7, "\"top\" cannot be \"flat\""},
    });
}

TEST_CASE("Every error of [notch] and of a corner is reported at its place") {
    check_errors({
        {24, "kind = \"dovetail\"", 24, 8, "\"kind\" cannot be \"dovetail\""},
        {24, "kind = \"full_dovetale\"", 24, 8,
         "\"kind\" cannot be \"full_dovetale\" (did you mean \"full dovetail\"?)"},
        {24, "kind = \"stated\"\nacross = \"-1:8\"", 23, 1, "\"along\" is missing in [notch]"},
        {24, "kind = \"stated\"\nalong = \"1:8\"", 23, 1, "\"across\" is missing in [notch]"},
        {24, "slope = \"-1:8\"", 24, 9, "\"slope\" is out of bounds"},
        {24, "slope = \"steep\"", 24, 10, "\"slope\": \"steep\" stands where a number should"},
        {24, "slope = 12.5", 24, 9, "\"slope\" cannot be read: the slope is steeper than 10:1 (84 degrees)"},
        {24, "slope = inf", 24, 9, "\"slope\" cannot be read: \"inf\" stands where a number should"},
        {24, "slope = true", 24, 9, "\"slope\" cannot be true or false"},
        {24, "overhang = \"-1 in\"", 24, 12, "\"overhang\" is out of bounds"},
        {24, "shoulder_deep = \"1 mm\"\nshoulder_proud = \"1 mm\"", 25, 18,
         "a shoulder cannot be both deep and proud"},
        {24, "shoulder_deep = \"-1 mm\"", 24, 17, "\"shoulder_deep\" is out of bounds"},
        {24, "least_tail = \"3 m\"", 24, 14, "\"least_tail\" is out of bounds"},
        {26, "", 25, 1, "\"between\" is missing in this [[corner]]"},
        {26, "between = \"A B\"", 26, 11, "\"between\" cannot be a text"},
        {26, "between = [\"A\", 3]", 26, 11, "\"between\" cannot be a list"},
        {26, "between = [\"A\"]", 26, 11, "\"between\" does not name two walls"},
        {26, "between = [\"A\", \"C\"]", 26, 11, "walls \"A\" and \"C\" do not meet at a corner"},
        {26, "between = [\"A\", \"A\"]", 26, 11, "walls \"A\" and \"A\" do not meet at a corner"},
        {26, "between = [\"A\", \"X\"]", 26, 11, "there is no wall \"X\""},
        {26, "between = [\"A\", \"B\"]\n[[corner]]\nbetween = [\"B\", \"A\"]", 27, 1,
         "the corner of \"A\" and \"B\" is stated twice; the other one stands in line 25"},
        {26, "between = [\"A\", \"B\"]\nkind = \"stated\"\nalong = \"1:8\"", 25, 1,
         "\"across\" is missing in this [[corner]]"},
    });
}

TEST_CASE("Every error of [logs] and of one log is reported at its place") {
    check_errors({
        {27, "[[log]]\nwall = \"A\"\nround = 1\nkind = \"saddle\"\n[[opening]]", 30, 8,
         "\"kind\" cannot be \"saddle\""},
        {27, "[[log]]\nwall = \"A\"\nround = 1\noverhang_left = \"101 m\"\n[[opening]]", 30, 17,
         "\"overhang_left\" of round 1 of wall \"A\" is out of bounds"},
        {27, "[logs]\ndiameter = \"0 in\"\n[[opening]]", 28, 12, "\"diameter\" is out of bounds"},
        {27, "[[logs]]\n[[opening]]", 27, 1, "\"logs\" is stated once in a document"},
        {27, "[logs]\nbutt_height = \"0 in\"\n[[opening]]", 28, 15, "\"butt_height\" is out of bounds"},
        {27, "[logs]\ntip_height = 8\n[[opening]]", 28, 14, "\"tip_height\" cannot be a number"},
        {27, "[logs]\nbutt_width = \"3 m\"\n[[opening]]", 28, 14, "\"butt_width\" is out of bounds"},
        {27, "[logs]\ntip_width = \"-1 in\"\n[[opening]]", 28, 13, "\"tip_width\" is out of bounds"},
        {27, "[logs]\nbutt = \"rigth\"\n[[opening]]", 28, 8,
         "\"butt\" cannot be \"rigth\" (did you mean \"right\"?)"},
        {27, "[log]\n[[opening]]", 27, 1, "\"log\" cannot be a table"},
        {27, "[[log]]\nround = 1\n[[opening]]", 27, 1, "\"wall\" is missing in this [[log]]"},
        {27, "[[log]]\nwall = \"A\"\n[[opening]]", 27, 1, "\"round\" is missing in this [[log]]"},
        {27, "[[log]]\nwall = \"E\"\nround = 1\n[[opening]]", 28, 8, "there is no wall \"E\""},
        {27, "[[log]]\nwall = \"A\"\nround = 0\n[[opening]]", 29, 9,
         "\"round\" of log 1 in wall \"A\" is out of bounds"},
    });
}

TEST_CASE("Every error of an opening, its trim or a step of the foundation is reported at its place") {
    check_errors({
        {36, "species = \"x\"\n[trim]\nspline_width = \"2 in\"", 37, 1,
         "a spline groove needs a width and a depth"},
        {36,
         "species = \"x\"\n[[opening]]\nwall = \"A\"\nfrom_left = \"2 ft\"\nsill = \"2 ft\"\nwidth = \"2 "
         "ft\"\n"
         "height = \"2 ft\"\nspline_width = \"2 in\"",
         43, 16, "a spline groove needs a width and a depth"},
        {27, "[[step]]\nwall = \"A\"\nfrom_left = 0\nwidth = \"1 m\"\n[[opening]]", 27, 1,
         "\"rise\" is missing in this [[step]]"},
        {27, "[[step]]\nwall = \"A\"\nfrom_left = 0\nwidth = 0\nrise = \"9 in\"\n[[opening]]", 30, 9,
         "\"width\" of step 1 in wall \"A\" is out of bounds"},
        {27, "[opening]", 27, 1, "\"opening\" cannot be a table"},
        {28, "", 27, 1, "\"wall\" is missing in this [[opening]]"},
        {28, "wall = \"E\"", 28, 8, "there is no wall \"E\""},
        {28, "kind = \"gate\"\nwall = \"A\"", 28, 8, "\"kind\" cannot be \"gate\""},
        {29, "", 27, 1, "\"from_left\" is missing in this [[opening]]"},
        {29, "from_left = \"-3 ft\"", 29, 13, "\"from_left\" of opening 1 in wall \"A\" is out of bounds"},
        {30, "", 27, 1, "\"sill\" is missing in this [[opening]]"},
        {30, "sill = \"-1 in\"", 30, 8, "\"sill\" of opening 1 in wall \"A\" is out of bounds"},
        {31, "", 27, 1, "\"width\" is missing in this [[opening]]"},
        {31, "width = 0", 31, 9, "\"width\" of opening 1 in wall \"A\" is out of bounds"},
        {32, "", 27, 1, "\"height\" is missing in this [[opening]]"},
        {32, "height = \"101 m\"", 32, 10, "\"height\" of opening 1 in wall \"A\" is out of bounds"},
    });
}

TEST_CASE("Every error of a floor or a bore is reported at its place") {
    check_errors({
        {36, "species = \"x\"\n[[floor]]\nname = \"A\"\nfrom = \"A\"\nto = \"C\"\nlevel = \"2 ft\"", 38, 8,
         "the name \"A\" is taken; the other one stands in line 5"},
        {36, "species = \"x\"\n[[floor]]\nname = \"G\"\nfrom = \"A\"\nto = \"A\"\nlevel = \"2 ft\"", 40, 6,
         "joists cannot lie from wall \"A\" to itself"},
        {36, "species = \"x\"\n[[floor]]\nname = \"G\"\nfrom = \"A\"\nto = \"C\"", 37, 1,
         "\"level\" is missing in this [[floor]]"},
        {36,
         "species = \"x\"\n[[floor]]\nname = \"G\"\nfrom = \"A\"\nto = \"C\"\nlevel = \"2 ft\"\n"
         "[[floor.beam]]\nwidth = \"8 in\"\nheight = \"8 in\"",
         42, 1, "\"from_wall\" is missing in this [[floor.beam]]"},
        {36,
         "species = \"x\"\n[[floor]]\nname = \"G\"\nfrom = \"A\"\nto = \"C\"\nlevel = \"2 ft\"\n"
         "[[floor.opening]]\nfrom_left = \"3 ft\"\nfrom_wall = \"3 ft\"\nwidth = \"3 ft\"",
         42, 1, "\"length\" is missing in this [[floor.opening]]"},
        {36,
         "species = \"x\"\n[[bore]]\nuse = \"rod\"\nwall = \"A\"\nfrom_left = \"2 ft\"\ndiameter = \"1 in\"\n"
         "from_round = 3\nto_round = 2",
         43, 12, "the bore ends below its start"},
        {36,
         "species = \"x\"\n[[bore]]\nuse = \"nail\"\nwall = \"A\"\nfrom_left = \"2 ft\"\ndiameter = \"1 in\"",
         38, 7, "\"use\" cannot be \"nail\""},
    });
}

TEST_CASE("Every error of [pegs] and of [wood] is reported at its place") {
    check_errors({
        {34, "wanted = \"yes\"", 34, 10, "\"wanted\" cannot be a text"},
        {34, "diameter = \"0 mm\"", 34, 12, "\"diameter\" is out of bounds"},
        {34, "spacing = \"0 mm\"", 34, 11, "\"spacing\" is out of bounds"},
        {34, "end_distance = \"-1 mm\"", 34, 16, "\"end_distance\" is out of bounds"},
        {34, "between = \"-1 mm\"", 34, 11, "\"between\" is out of bounds"},
        {34, "depth_below = 0", 34, 15, "\"depth_below\" is out of bounds"},
        {34, "depth_below = 1.01", 34, 15, "\"depth_below\" is out of bounds"},
        {34, "depth_below = nan", 34, 15, "\"depth_below\" is out of bounds"},
        {34, "depth_below = \"half\"", 34, 15, "\"depth_below\" cannot be a text"},
        {34, "fewest = -1", 34, 10, "\"fewest\" is out of bounds"},
        {34, "fewest = 21", 34, 10, "\"fewest\" is out of bounds"},
        {36, "species = \"\"", 36, 11, "\"species\" is empty"},
        {36, "moisture = \"19 %\"", 36, 12, "\"moisture\" cannot be a text"},
        {36, "moisture = 301", 36, 12, "\"moisture\" is out of bounds"},
        {36, "moisture = inf", 36, 12, "\"moisture\" is out of bounds"},
        {36, "moisture = -1", 36, 12, "\"moisture\" is out of bounds"},
    });
}
