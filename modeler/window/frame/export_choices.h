// Which outputs are to be made, and below each that is chosen what it can be told.
#pragma once

#include "exporters/registry/registry.h"

#include <QWidget>
#include <vector>

class QCheckBox;

namespace roundlay::window {

class OptionFields;

class ExportChoices : public QWidget {
    Q_OBJECT
  public:
    explicit ExportChoices(const ExportJob &job, QWidget *parent = nullptr);

    std::vector<const Exporter *> wanted() const;
    /// What shows the whole shell is not made of some pieces.
    void offer(bool of_all_pieces);

    /// Null where all that was typed for what is wanted is in `into`; else the first field that is wrong,
    /// with the reason below it.
    QWidget *take(ExportOptions &into);

    /// What was stated for the document at its last export, and keeps what is stated now for its next.
    void recall(const QString &document);
    void keep(const QString &document) const;

  signals:
    void changed();
    void opened(QWidget *fields); ///< the fields of what was just chosen

  private:
    struct Choice {
        const Exporter *exporter;
        QCheckBox *box;
        OptionFields *fields; ///< null where it asks for nothing of its own
    };
    bool is_wanted(const Choice &choice) const;
    bool is_asked(const OptionFields &fields) const;
    void add(const Exporter &exporter, const ExportJob &job);
    void add_shared(const ExportJob &job);
    void show_fields();
    QWidget *check(ExportOptions &into);
    std::vector<OptionFields *> all_fields() const;

    std::vector<Choice> choices_;
    std::vector<OptionFields *> shared_; ///< what several ask
    ExportOptions looked_at_;            ///< while it is typed
    bool asked_ = false;                 ///< an export was tried: what is missing is told
};

} // namespace roundlay::window
