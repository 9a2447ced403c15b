#include "exporters/page/labels.h"

namespace roundlay {

std::vector<YardLabel> page_labels(const Voice &voice, std::size_t steps) {
    const std::string first = "%1", second = "%2", third = "%3"; // the page's own amounts
    return {
        {"find", voice.say("Find a log by its tag")},
        {"logs", voice.say("All logs")},
        {"scan", voice.say("Scan a tag")},
        {"whole", voice.say("Whole shell")},
        {"raise", voice.say("Raise")},
        {"back", voice.say("Back")},
        {"next", voice.say("Next")},
        {"step", voice.say("Step %1 of %2: %3", first, second, third)},
        {"all_up", voice.say("The raise has %1 {step|steps}: go back to see them one by one", steps)},
        {"no_step", voice.say("Nothing is up yet")},
        {"lift", voice.say("Lift: %1, estimated", first)},
        {"then", voice.say("Then: %1", first)},
        {"close", voice.say("Close")},
        {"sheet", voice.say("Cut sheet")},
        {"sheets", voice.say("Sheet %1 of %2", first, second)},
        {"nearer", voice.say("Nearer")},
        {"farther", voice.say("Farther")},
        {"none", voice.say("No log is called so: %1", first)},
        {"other_state",
         voice.say("This tag is of another state of %1: the log has been changed since the tag "
                   "was printed, or this page is older. Look which sheet is the right one "
                   "before you cut.",
                   first)},
        {"no_camera", voice.say("The camera does not open; take a picture of the tag instead")},
        {"no_code", voice.say("There is no code to be read in this picture")},
        {"picture", voice.say("Take a picture of the tag")},
        {"flat", voice.say("This browser shows no solid models (WebGL); the shell is drawn slowly instead")},
        {"help", voice.say("Turn with one finger, move and come nearer with two, tap a log")},
        {"shell", voice.say("The shell, to be turned and tapped")},
    };
}

} // namespace roundlay
