// Boxes of the record: a number as it was noted, and the faces that something is on.
#pragma once

#include "kernel/record/found_log.h"
#include "modeler/window/panels/length_edit.h"

namespace roundlay::window {

/// A number stays as it is typed; what it says by its sheet is the document's to tell. A sign at its end
/// tells what it is where it is not measured: the context menu changes that.
class NoteEdit : public ValueEdit<NotedLength> {
    Q_OBJECT
  public:
    explicit NoteEdit(QWidget *parent = nullptr);

    const NotedLength &number() const { return value_; }
    void set_number(const NotedLength &number);
    /// By the rules of the plan, where nobody has measured; shown pale. Empty: the plan has none.
    void propose(const QString &length);
    void call(Certainty certainty); ///< by the person

  protected:
    std::optional<MeasureError> read(const QString &typed) override;
    QString shown() const override { return QString::fromStdString(value_.written); }
    void contextMenuEvent(QContextMenuEvent *event) override;
    void paintEvent(QPaintEvent *event) override;
};

/// What stands at the end of a number that is not simply measured; empty for one that is.
QString sign_of(const NotedLength &number);
/// The same in words, with who says so and when.
QString words_of(const NotedLength &number);

/// Faces by their words, or by as many of their letters as tell them apart: "out, top".
class FacesEdit : public ValueEdit<std::vector<FoundFace>> {
    Q_OBJECT
  public:
    using ValueEdit::ValueEdit;

    const std::vector<FoundFace> &faces() const { return value_; }
    void set_faces(const std::vector<FoundFace> &faces) { set_value(faces); }

  protected:
    std::optional<MeasureError> read(const QString &typed) override;
    QString shown() const override;
};

} // namespace roundlay::window
