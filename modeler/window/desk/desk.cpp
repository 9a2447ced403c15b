#include "modeler/window/desk/desk.h"

#include "exporters/files/safe_file.h"
#include "kernel/document/limits.h"
#include "kernel/measure/character.h"
#include "modeler/window/desk/kernel_words.h"
#include "modeler/window/desk/problem_words.h"
#include "modeler/window/desk/search.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/desk/workshop.h"

#include <QDir>
#include <QFileInfo>
#include <QUndoCommand>
#include <algorithm>

namespace roundlay::window {

/// From one text to the other.
class TextEdit : public QUndoCommand {
  public:
    TextEdit(Desk &desk, const QString &name, std::string before, std::string after)
        : QUndoCommand(name), desk_(desk), before_(std::move(before)), after_(std::move(after)) {}
    void undo() override { desk_.set_text(before_); }
    void redo() override { desk_.set_text(after_); }

  private:
    Desk &desk_;
    std::string before_, after_;
};

namespace {

constexpr int wondered_at_ms = 200;     // nobody is told of a search that is over sooner
constexpr int replaced_within_ms = 150; // a file that is saved anew is away for a moment

std::filesystem::path file_path(const QString &path) {
    return path.toStdString();
}

std::optional<std::string> held_by(const QString &path) {
    auto bytes = read_file(file_path(path), limits::bytes);
    if (auto *found = std::get_if<std::string>(&bytes)) return std::move(*found);
    return {};
}

bool is_utf8(std::string_view bytes) {
    for (std::size_t length = 0; !bytes.empty(); bytes.remove_prefix(length))
        if ((length = character_length(bytes)) == 0) return false;
    return true;
}

/// What is no text cannot be shown as one: whatever was shown, saved again, would be other bytes than these.
std::optional<QString> why_no_text(const Document &document) {
    const std::string &bytes = document.text();
    if (is_utf8(bytes) && bytes.find('\0') == std::string::npos) return {};
    const Problems problems = document.read().problems;
    const Problem *error = first_error_of(problems);
    return Desk::tr("%1 is not opened and stays as it is. Line %2: %3. Text in another encoding can be saved "
                    "as UTF-8 by the program that wrote it.")
        .arg(QFileInfo(QString::fromStdString(document.file())).fileName())
        .arg(error != nullptr ? error->place.line : 1)
        .arg(error != nullptr ? problem_text(*error) : QString());
}

/// A document from the disk that can be shown, or a sentence why there is none.
std::variant<Document, QString> text_document(const QString &path) {
    auto opened = open_document(file_path(path));
    if (const auto *problem = std::get_if<Problem>(&opened)) return problem_text(*problem);
    auto document = std::get<Document>(std::move(opened));
    if (auto why = why_no_text(document)) return std::move(*why);
    return document;
}

} // namespace

Desk::Desk(QObject *parent)
    : QObject(parent), state_(std::make_shared<State>()), workshop_(std::make_unique<Workshop>()),
      search_(std::make_unique<Search>()) {
    connect(search_.get(), &Search::ended, this, &Desk::take_found);
    told_of_search_.setSingleShot(true);
    told_of_search_.setInterval(wondered_at_ms);
    connect(&told_of_search_, &QTimer::timeout, this, &Desk::searching);
    connect(workshop_.get(), &Workshop::worked, this, &Desk::take, Qt::QueuedConnection);
    connect(workshop_.get(), &Workshop::ordered, this, &Desk::order_known, Qt::QueuedConnection);
    connect(&history_, &QUndoStack::cleanChanged, this, &Desk::file_changed);
    looking_.setSingleShot(true);
    looking_.setInterval(replaced_within_ms);
    connect(&watcher_, &QFileSystemWatcher::fileChanged, &looking_, qOverload<>(&QTimer::start));
    connect(&looking_, &QTimer::timeout, this, [this] {
        watch();
        look_at_disk();
    });
}

/// Where the file is gone, or is no document any more while this one is, what is here is all there is of it.
void Desk::look_at_disk() {
    const bool changed = changed_on_disk(), was_only_here = only_here_;
    only_here_ = changed && holds_less_on_disk();
    if (only_here_ != was_only_here) emit file_changed();
    if (changed) emit disk_changed();
}

bool Desk::holds_less_on_disk() const {
    const auto there = text_document(path_);
    const auto *document = std::get_if<Document>(&there);
    return !document || (!document->read().shell && reading()->shell);
}

/// The history tells of its end, when nobody is left to hear it.
Desk::~Desk() {
    history_.disconnect();
}

std::optional<QString> Desk::open(const QString &path) {
    auto opened = text_document(path);
    if (auto *why = std::get_if<QString>(&opened)) return std::move(*why);
    on_disk_ = std::get<Document>(opened).text();
    start_over(path, {}, std::get<Document>(std::move(opened)));
    return {};
}

void Desk::begin(const QString &title, const std::string &text, Begun how, const QString &folder) {
    on_disk_.reset();
    start_over({}, title, Document(text, title.toStdString()), how == Begun::made, folder);
}

void Desk::recover(const QString &path, const QString &title, const std::string &text,
                   const std::optional<std::string> &on_disk) {
    on_disk_ = on_disk;
    start_over(path, title, Document(text, (path.isEmpty() ? title : path).toStdString()), true);
}

std::optional<QString> Desk::reload() {
    auto opened = text_document(path_);
    if (auto *why = std::get_if<QString>(&opened)) return std::move(*why);
    if (before_drag_) cancel();
    on_disk_ = std::get<Document>(opened).text();
    replace_text(tr("Load from the disk"), *on_disk_);
    loose_ = only_here_ = false;
    history_.setClean();
    watch();
    emit file_changed();
    return {};
}

std::optional<QString> Desk::save_to(const QString &path) {
    if (const auto error = write_file(file_path(path), document_.text())) return kernel_words(error->message);
    on_disk_ = document_.text();
    path_ = path;
    document_ = Document(document_.text(), path.toStdString());
    loose_ = only_here_ = false;
    history_.setClean();
    watch();
    emit file_changed();
    return {};
}

void Desk::close() {
    on_disk_.reset();
    start_over({}, {}, {});
    open_ = false;
    emit file_changed();
}

QString Desk::title() const {
    if (!path_.isEmpty()) return QFileInfo(path_).completeBaseName();
    return title_.isEmpty() ? tr("Untitled shell") : title_;
}

QString Desk::folder() const {
    return path_.isEmpty() ? begun_beside_ : QFileInfo(path_).absolutePath();
}

bool Desk::unsaved() const {
    return open_ && (loose_ || only_here_ || !history_.isClean());
}

bool Desk::changed_on_disk() const {
    return !path_.isEmpty() && held_by(path_) != on_disk_;
}

bool Desk::gone_from_disk() const {
    return !path_.isEmpty() && !QFileInfo::exists(path_);
}

QString Desk::free_path_beside() const {
    const QFileInfo file(path_);
    QString free;
    for (int number = 1; free.isEmpty() || QFileInfo::exists(free); ++number) {
        const QString name = tr("%1-changed-elsewhere").arg(file.completeBaseName());
        free = file.dir().filePath((number == 1 ? name : QStringLiteral("%1-%2").arg(name).arg(number)) +
                                   u'.' + file.suffix());
    }
    return free;
}

void Desk::keep_mine() {
    on_disk_ = held_by(path_);
    loose_ = true;
    emit file_changed();
}

bool Desk::replace_text(const QString &name, const std::string &text) {
    if (text == document_.text()) return true;
    history_.push(new TextEdit(*this, name, document_.text(), text));
    return true;
}

void Desk::show(const ShellEdit &change) {
    if (!before_drag_) before_drag_ = document_;
    const Made next = edited(*before_drag_, change);
    if (const auto *made = std::get_if<Document>(&next))
        set_text(made->text());
    else
        emit refused(std::get<QString>(next));
}

std::optional<Shell> Desk::before_drag() const {
    return before_drag_ ? read(*before_drag_)->shell : std::nullopt;
}

void Desk::settle(const QString &name) {
    if (!before_drag_) return;
    const std::string before = before_drag_->text(), after = document_.text();
    before_drag_.reset();
    if (before != after) history_.push(new TextEdit(*this, name, before, after));
    if (state_->revision != revision_ || state_->lacks_advice)
        work_out(); // the drag is over: with all advice
    search_next();
}

void Desk::cancel() {
    if (!before_drag_) return;
    const std::string before = before_drag_->text();
    before_drag_.reset();
    set_text(before);
    search_next();
}

UnitSystem Desk::units() const {
    if (state_->read.shell) return state_->read.shell->units;
    return standing_ ? standing_->job.shell.units : UnitSystem::metric;
}

void Desk::set_text(const std::string &text) {
    if (text == document_.text()) return;
    const bool was_unsaved = unsaved();
    document_ = Document(text, document_.file());
    work_out();
    emit text_changed();
    if (unsaved() != was_unsaved) emit file_changed(); // not at every step of a drag
}

void Desk::start_over(const QString &path, const QString &title, Document document, bool loose,
                      const QString &folder) {
    open_ = true;
    path_ = path;
    title_ = title;
    begun_beside_ = folder;
    document_ = std::move(document);
    before_drag_.reset();
    seen_.clear();
    wanted_.clear();
    searched_.reset(); // what is under way is of nobody any more
    told_of_search_.stop();
    loose_ = loose;
    only_here_ = false;
    standing_.reset();
    auto nothing = std::make_shared<State>(); // nor does anything follow from what lay here before
    nothing->revision = revision_;
    state_ = std::move(nothing);
    history_.clear();
    watch();
    work_out();
    emit began();
    emit text_changed();
    emit file_changed();
}

void Desk::work_out() {
    SeenDocument asked(document_);
    asked.state = seen_;
    if (known_.text == document_.text() && known_.state == seen_) asked.already = known_.read;
    asked.before = state_;
    workshop_->ask_for(asked, ++revision_, dragging());
}

void Desk::want_order(bool wanted) {
    workshop_->want_order(wanted);
}

void Desk::take(StatePtr state) {
    const bool same = state->revision == state_->revision, advised = same && state_->lacks_advice;
    if (same && !advised && state_->lacks_bores) return take_bores(std::move(state));
    if (state->revision <= state_->revision && !advised) return;
    state_ = std::move(state);
    if (state_->stands()) standing_ = state_;
    emit state_changed();
    if (!state_->failure.empty()) emit failed(text(state_->failure));
}

/// Nothing else follows from them: whoever shows no models is not asked to show anything anew.
void Desk::take_bores(StatePtr state) {
    if (!state->failure.empty()) emit failed(text(state->failure));
    if (!state->stands()) return;
    standing_ = state_ = std::move(state);
    emit models_changed();
}

/// A file that is replaced is another file to the system: it is watched anew.
void Desk::watch() {
    if (!watcher_.files().isEmpty()) watcher_.removePaths(watcher_.files());
    if (!path_.isEmpty() && QFileInfo::exists(path_)) watcher_.addPath(path_);
}

} // namespace roundlay::window
