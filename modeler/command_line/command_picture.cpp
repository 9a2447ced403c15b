#include "exporters/picture/picture.h"
#include "exporters/registry/make_picture.h"
#include "modeler/command_line/command.h"
#include "modeler/command_line/export_options.h"
#include "modeler/command_line/load.h"
#include "modeler/command_line/save.h"
#include "modeler/command_line/values.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <fstream>

namespace roundlay {

namespace {

struct PictureWords {
    DocumentWords document;
    std::string to, view = "south-east", size = "1600x1200";
    bool parallel = false, force = false;
};

std::string picture_json(const PictureWords &words, const ExportJob &job, std::size_t bytes) {
    const PictureOptions &options = job.options.picture;
    nlohmann::ordered_json json = {{"file", words.to},
                                   {"view", words.view},
                                   {"width", options.width},
                                   {"height", options.height},
                                   {"bytes", bytes}};
    if (!job.shell.state.empty()) json["state"] = job.shell.state;
    return json.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n";
}

/// Pictures are made again and again; anything else that stands there is a person's own.
bool may_replace(const PictureWords &words) {
    if (words.force || words.to == "-") return true;
    std::ifstream there(words.to, std::ios::binary);
    std::string start(200, '\0');
    there.read(start.data(), static_cast<std::streamsize>(start.size()));
    return is_own_png(std::string_view(start).substr(0, static_cast<std::size_t>(there.gcount())));
}

ExitCode run_picture(const Console &console, const PictureWords &words) {
    const TypedOptions typed = {{&export_option("view"), words.view}, {&export_option("size"), words.size}};
    check_words(typed);
    ExportOptions read;
    take_options(typed, {}, read);
    PictureOptions options = read.picture;
    options.perspective = !words.parallel;
    if (words.to == "-" && console.json) throw UsageError("--json needs a file to write the picture to");
    if (words.to == "-" && console.stdout_is_terminal())
        throw UsageError("a picture cannot be shown on a terminal: name a file with --to, or use a pipe");
    auto loaded = load(console, words.document);
    if (const auto *code = std::get_if<ExitCode>(&loaded)) return *code;
    ExportJob &job = std::get<Loaded>(loaded).job;
    job.options.picture = options;
    const auto made = make_picture(job);
    if (const auto *failure = std::get_if<ExportFailure>(&made)) {
        console.error(failure->message);
        return ExitCode::no_picture;
    }
    const std::string &png = std::get<std::string>(made);
    const ExitCode saved = save(console, words.to, png, may_replace(words));
    if (saved != ExitCode::fine || !console.json) return saved;
    return console.print(picture_json(words, job, png.size()));
}

} // namespace

CommandRun declare_picture(CLI::App &app) {
    auto words = std::make_shared<PictureWords>();
    add_document(app, words->document);
    app.add_option("--to", words->to, "the PNG file to write; - writes to a pipe")
        ->type_name("PNG")
        ->required();
    app.add_option("--view", words->view,
                   "south-east, north-east, north-west, south-west, south, east, north, west or plan")
        ->type_name("VIEW")
        ->capture_default_str();
    app.add_option("--size", words->size, "width x height in pixels")
        ->type_name("WxH")
        ->capture_default_str();
    app.add_flag("--parallel", words->parallel, "without perspective, so that equal lengths look equal");
    app.add_flag("--force", words->force, "replace a file that is there and is no picture of roundlay's");
    return [words](const Console &console) { return run_picture(console, *words); };
}

} // namespace roundlay
