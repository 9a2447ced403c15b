#include "modeler/window/panels/project_fields.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/field_row.h"
#include "modeler/window/panels/length_edit.h"

#include <QFormLayout>

namespace roundlay::window {

ProjectFields::ProjectFields(Desk &desk, QWidget *parent)
    : QGroupBox(tr("On title blocks and in STEP"), parent), desk_(desk) {
    auto *form = new QFormLayout(this);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    add(*form, QStringLiteral("project_number"), tr("Project number"), tr("Change project number"),
        &Project::number);
    add(*form, QStringLiteral("project_owner"), tr("Owner"), tr("Change owner"), &Project::owner);
    add(*form, QStringLiteral("project_creator"), tr("Drawn by"), tr("Change who drew it"),
        &Project::creator);
    add(*form, QStringLiteral("project_approved"), tr("Approved by"), tr("Change who approved it"),
        &Project::approved);
    add(*form, QStringLiteral("project_revision"), tr("Revision"), tr("Change revision"), &Project::revision);
}

void ProjectFields::show_project(const Project &project) {
    for (const Field &field : fields_)
        field.edit->set_name(text(project.*field.part));
}

void ProjectFields::add(QFormLayout &form, const QString &name, const QString &label, const QString &undo,
                        std::string Project::*part) {
    auto *edit = new NameEdit;
    edit->setObjectName(name);
    add_field(form, label, *edit);
    fields_.push_back({edit, part});
    connect(edit, &NameEdit::committed, this, [this, edit, undo, part] {
        commit(*edit, desk_, [&] {
            desk_.edit(undo, [edit, part](const Shell &shell) {
                Shell next = shell;
                next.project.*part = edit->name().toStdString();
                return std::optional(next);
            });
        });
    });
}

} // namespace roundlay::window
