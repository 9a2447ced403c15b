// Which outputs, of which pieces, where to; then how far it is, with a way to stop.
#pragma once

#include "exporters/registry/export_all.h"

#include <QDialog>
#include <atomic>
#include <thread>

class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;
class QScrollArea;

namespace roundlay::window {

class ExportChoices;

/// Progress of a thread, told to the window.
class ExportProgress : public QObject, public Progress {
    Q_OBJECT
  public:
    void at(std::string_view doing, int done, int of) override;
    bool cancelled() const override { return cancelled_; }
    void cancel() { cancelled_ = true; }
    void restart() { cancelled_ = false; }

  signals:
    void told(const QString &doing, int done, int of);

  private:
    std::atomic<bool> cancelled_ = false;
};

class ExportDialog : public QDialog {
    Q_OBJECT
  public:
    using Outcome = std::variant<ExportReport, ExportFailure>;
    using Exporting = std::function<Outcome(const ExportJob &, const std::vector<const Exporter *> &,
                                            const std::filesystem::path &, Progress &, IfThere)>;
    /// `exporting` runs in a thread of its own; what it throws ends there, is noted, and told as the result.
    ExportDialog(ExportJob job, const QString &folder, QWidget *parent = nullptr,
                 Exporting exporting = export_all);
    ~ExportDialog() override;

    void start();
    bool is_running() const { return running_; }
    QString folder() const;
    const QString &result() const { return result_; } ///< one sentence when it has ended
    bool succeeded() const { return succeeded_; }

  signals:
    void ended();

  protected:
    void reject() override;

  private:
    QWidget *choices_in_view();
    void add_pieces(QGridLayout &grid, int row);
    PieceChoice pieces() const;
    void choose_pieces();
    QString document() const;
    void bring_into_view(QWidget *part);
    void put_right(QWidget &wrong);
    void add_folder(QGridLayout &grid, int row);
    QLayout *buttons();
    void connect_all();
    void say(const QString &sentence);
    void choose_folder();
    void enable_start();
    void spare_own_files();
    void run_aside(const std::function<Outcome()> &export_them);
    void finish(const Outcome &outcome);
    void open_folder() const;

    ExportJob job_;
    Exporting exporting_;
    ExportChoices *choices_;
    QScrollArea *scroll_ = nullptr;
    QComboBox *pieces_;
    QLineEdit *tags_;
    QLineEdit *folder_;
    QProgressBar *bar_;
    QLabel *words_;
    QPushButton *start_, *close_, *open_;
    QCheckBox *replace_; ///< shown once files of the person's own stood in the way
    ExportProgress progress_;
    std::thread thread_;
    bool running_ = false, succeeded_ = false;
    QString result_;
};

} // namespace roundlay::window
