// One state of the document and everything that was worked out of it. Made aside, then never changed.
#pragma once

#include "exporters/picture/scene.h"
#include "exporters/registry/job.h"
#include "kernel/document/edit.h"

#include <QMetaType>
#include <memory>

namespace roundlay::window {

/// Milliseconds that each stage took.
struct Times {
    double read = 0, layout = 0, bodies = 0, review = 0, models = 0;
    double bores = 0; ///< carved afterwards
    double all() const { return read + layout + bodies + review + models; }
};

struct State {
    quint64 revision = 0; ///< of the text that it is of; later edits have higher ones
    Document document;
    std::string seen; ///< which state of the house this is; empty: the document's own shell
    ReadResult read;
    ExportJob job; ///< shell, layout, bodies, findings; empty where the text states no shell
    SceneModels models;
    bool lacks_bores = false;  ///< some of the models: the same state comes again with them
    bool lacks_advice = false; ///< its findings, in the midst of a drag: it comes again with it
    Layout as_stated;          ///< walls alone, where the layout has none
    Times times;
    std::string failure; ///< of the program itself, as it tells; nothing but the text is worked out then

    /// True where the shell stands: pieces can be shown, drawn and exported. Not where what is cut runs into
    /// one another, though all of it is laid out.
    bool stands() const {
        return read.shell && !job.layout.pieces.empty() && !job.bodies.empty() && !has_errors(job.findings);
    }

    /// What can be drawn of the text, whether or not it can be built: at least walls, where it states any.
    const Layout &drawn() const { return job.layout.walls.empty() ? as_stated : job.layout; }
    bool can_be_drawn() const { return read.shell && !drawn().walls.empty(); }
};

using StatePtr = std::shared_ptr<const State>;
using ReadPtr = std::shared_ptr<const ReadResult>;

/// A document, and how it is looked at.
struct SeenDocument : Document {
    SeenDocument() = default;
    SeenDocument(Document document) : Document(std::move(document)) {}

    std::string state = {}; ///< of the house, by its name; empty: the document's own shell
    ReadPtr already = {};   ///< where it was read in that state before; null: not yet
    StatePtr before = {};   ///< what was worked out last: where the shell is the same, nothing is cut anew
};

/// Reads it in the state that is asked for; where the text has no such state, in its own.
ReadPtr read_as_seen(const SeenDocument &document);
/// Which state that was; empty: its own.
std::string state_seen(const SeenDocument &document, const ReadResult &read);

} // namespace roundlay::window

Q_DECLARE_METATYPE(roundlay::window::StatePtr)
