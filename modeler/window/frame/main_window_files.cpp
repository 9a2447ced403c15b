#include "exporters/files/safe_file.h"
#include "exporters/files/sha256.h"
#include "exporters/words/catalogue.h"
#include "kernel/document/document.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/recovery.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/demo_files.h"
#include "modeler/window/frame/export_dialog.h"
#include "modeler/window/frame/main_window.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/frame/new_shell_words.h"
#include "modeler/window/frame/print.h"
#include "modeler/window/frame/recent.h"
#include "modeler/window/frame/start_page.h"
#include "modeler/window/panels/count_box.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/panels/text_panel.h"
#include "modeler/window/record/choice_edit.h"

#include <QAbstractSpinBox>
#include <QCloseEvent>
#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QLineEdit>
#include <QLocale>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>

namespace roundlay::window {

namespace {

QString filter() {
    return MainWindow::tr("roundlay documents (*%1)").arg(text(document_extension));
}

QString with_extension(QString path) {
    if (!path.endsWith(text(document_extension))) path += text(document_extension);
    return path;
}

/// Qt's dialog takes quotes for the bounds of several names, and would save under a part of what was typed.
class SaveDialog : public QFileDialog {
  public:
    using QFileDialog::QFileDialog;

  protected:
    void accept() override {
        const auto *typed = findChild<QLineEdit *>(QStringLiteral("fileNameEdit"));
        if (typed == nullptr || !typed->text().contains(u'"')) return QFileDialog::accept();
        QMessageBox::information(this, windowTitle(),
                                 MainWindow::tr("A file's name cannot have \" in it here: leave it out."));
    }
};

} // namespace

bool MainWindow::open(const QString &path) {
    if (const auto why = desk_->open(QFileInfo(path).absoluteFilePath())) {
        message_->say(*why, {{tr("Close"), [this] {
                                  if (!desk_->is_open()) offer_recovery();
                              }}});
        return false;
    }
    demo_files_->let_go();
    selection_->clear();
    recovery_->clear();
    clear_message();
    remember_file(desk_->path());
    show_document();
    offer([this](const Rescued &work) { return is_of_this(work); });
    return true;
}

void MainWindow::begin(const Shell &shell, const QString &title) {
    clear_message();
    demo_files_->let_go();
    selection_->clear();
    const auto in_our_words = [](std::string_view english) {
        return std::string(translation_of(english, language()).value_or(english));
    };
    desk_->begin(title, write_document(shell, {}, in_our_words));
}

void MainWindow::begin_demo(int number) {
    if (!may_leave()) return;
    const Demo demo = demos()[static_cast<std::size_t>(number)];
    QFile file(demo.file);
    if (!file.open(QIODevice::ReadOnly)) return;
    clear_message();
    selection_->clear();
    desk_->begin(QFileInfo(demo.file).completeBaseName(), file.readAll().toStdString(), Begun::copied,
                 demo_files_->put_out(demo.file));
}

bool MainWindow::save_to(const QString &path) {
    take_typed();
    if (const auto why = desk_->save_to(path)) {
        message_->say(*why, {{tr("Save elsewhere…"), [this] { save_as(); }}, {tr("Close"), {}}});
        return false;
    }
    recovery_->clear();
    clear_message();
    keeping_.stop();
    remember_file(path);
    show_document();
    tell_left_out();
    offer_demo_files();
    return true;
}

/// Once: whoever wants none has said so.
void MainWindow::offer_demo_files() {
    if (!demo_files_->are_out()) return;
    demo_files_->let_go();
    const QString folder = desk_->folder();
    message_->say(tr("The photographs of this demo lie inside the program, and the document looks for them "
                     "beside itself."),
                  {{tr("Put them beside it"),
                    [this, folder] {
                        if (!demo_files_->put_beside(folder))
                            message_->say(tr("The photographs could not be put into %1.").arg(folder),
                                          {{tr("Close"), {}}});
                        emit desk_->file_changed(); // so that they are looked for again
                    }},
                   {tr("Leave them"), {}}});
}

bool MainWindow::save() {
    take_typed();
    if (desk_->path().isEmpty()) return save_as();
    if (desk_->changed_on_disk() && !desk_->gone_from_disk()) return save_over_change();
    return save_to(desk_->path());
}

bool MainWindow::save_as() {
    const QString usual =
        desk_->path().isEmpty()
            ? QDir::home().filePath(with_extension(text(safe_file_name(desk_->title().toStdString()))))
            : desk_->path();
    SaveDialog dialog(this, tr("Save the document"), {}, filter());
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(text(document_extension).mid(1)); // before it asks whether to replace a file
    dialog.selectFile(usual);
    return dialog.exec() == QDialog::Accepted && save_to(with_extension(dialog.selectedFiles().front()));
}

void MainWindow::close_document() {
    demo_files_->let_go();
    recovery_->clear();
    keeping_.stop();
    selection_->clear();
    desk_->close();
    clear_message();
}

void MainWindow::take_typed() {
    if (auto *field = qobject_cast<MeasureEdit *>(focusWidget())) field->finish();
    if (auto *choice = qobject_cast<ChoiceEdit *>(focusWidget())) choice->finish();
    if (auto *box = qobject_cast<QAbstractSpinBox *>(focusWidget())) box->interpretText();
    text_->take();
}

void MainWindow::let_go_of_typed() {
    for (MeasureEdit *edit : findChildren<MeasureEdit *>())
        edit->let_go();
    for (CountBox *box : findChildren<CountBox *>())
        box->let_go();
}

bool MainWindow::may_leave() {
    take_typed();
    if (!desk_->unsaved()) return true;
    QMessageBox box(QMessageBox::Warning, tr("Unsaved work"),
                    desk_->path().isEmpty() ? tr("%1 is not saved yet.").arg(desk_->title())
                                            : tr("%1 has changes that are not saved.").arg(desk_->title()),
                    QMessageBox::NoButton, this);
    box.setInformativeText(tr("Save before it closes?"));
    QPushButton *save_button = box.addButton(tr("&Save"), QMessageBox::AcceptRole);
    QPushButton *drop = box.addButton(tr("&Throw away"), QMessageBox::DestructiveRole);
    box.addButton(tr("&Go on working"), QMessageBox::RejectRole);
    box.exec();
    if (box.clickedButton() == save_button) return save();
    return box.clickedButton() == drop;
}

void MainWindow::ask_new(bool drawn) {
    NewShellDialog dialog(units_to_begin_with(QLocale::system()), this);
    connect(&dialog, &NewShellDialog::asked_for_keys, this, &MainWindow::show_shortcuts);
    if (drawn) dialog.choose(Shape::drawn);
    while (dialog.exec() == QDialog::Accepted) // who stays with the old one keeps what was typed of the new
        if (may_leave()) return begin(dialog.shell(), text(dialog.shell().name));
}

void MainWindow::ask_open() {
    if (!may_leave()) return;
    const QString path = QFileDialog::getOpenFileName(this, tr("Open a document"), desk_->path(), filter());
    if (!path.isEmpty()) open(path);
}

void MainWindow::ask_export() {
    take_typed();
    if (!desk_->is_current() || !desk_->state()->stands()) return;
    ExportJob job = desk_->state()->job;
    job.document = QFileInfo(desk_->path()).fileName().toStdString();
    job.folder = desk_->folder().toStdString();
    job.document_sha256 = sha256_hex(desk_->document().text());
    job.record = std::make_shared<const Record>(desk_->state()->read.record);
    const QFileInfo file(desk_->path().isEmpty() ? QDir::home().filePath(desk_->title()) : desk_->path());
    QString name = text(safe_file_name(file.completeBaseName().toStdString()));
    if (const std::string state = job.shell.state; !state.empty()) // each state into a folder of its own
        name += u'-' + text(safe_file_name(state)).replace(u' ', u'-');
    ExportDialog dialog(std::move(job), file.dir().filePath(tr("%1-export").arg(name)), this);
    dialog.exec();
}

void MainWindow::print_preview() {
    if (desk_->state()->stands())
        preview_sheets(desk_->state(), all_models, tr("%1, cut sheets").arg(desk_->title()), this);
}

void MainWindow::closeEvent(QCloseEvent *event) {
    if (!may_leave()) return event->ignore();
    close_document();
    remember_size();
    event->accept();
}

/// A watched folder can be on a disk that tells of no changes: whoever comes back looks again.
void MainWindow::changeEvent(QEvent *event) {
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::ActivationChange && isActiveWindow() && desk_->changed_on_disk() &&
        message_->sentence().isEmpty())
        tell_changed_on_disk();
}

} // namespace roundlay::window
