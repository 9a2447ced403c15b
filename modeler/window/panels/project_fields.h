// What stands in the title blocks of all sheets and in STEP files besides the shell's name.
#pragma once

#include "kernel/shell/shell.h"

#include <QGroupBox>
#include <vector>

class QFormLayout;

namespace roundlay::window {

class Desk;
class NameEdit;

class ProjectFields : public QGroupBox {
    Q_OBJECT
  public:
    explicit ProjectFields(Desk &desk, QWidget *parent = nullptr);

    void show_project(const Project &project);

  private:
    void add(QFormLayout &form, const QString &name, const QString &label, const QString &undo,
             std::string Project::*part);

    struct Field {
        NameEdit *edit;
        std::string Project::*part;
    };
    Desk &desk_;
    std::vector<Field> fields_;
};

} // namespace roundlay::window
