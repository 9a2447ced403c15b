// The photographs of a demo: they lie inside the program, and are put where files are looked for.
#pragma once

#include <QString>
#include <memory>

class QTemporaryDir;

namespace roundlay::window {

class DemoFiles {
  public:
    DemoFiles();
    ~DemoFiles();

    /// Those of the demo that lies in this file inside the program; what was put out before goes. The folder
    /// that they are in, as beside a document; empty where there are none, or it cannot be.
    QString put_out(const QString &demo_file);
    bool are_out() const { return folder_ != nullptr; }
    /// Copies them beside a document; what lies there already stays. False where one cannot be written.
    bool put_beside(const QString &folder) const;
    void let_go();

  private:
    QString inside_; ///< their folder inside the program
    std::unique_ptr<QTemporaryDir> folder_;
};

} // namespace roundlay::window
