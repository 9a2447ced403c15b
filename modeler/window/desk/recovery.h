// Unsaved work, kept aside until it is saved or thrown away by the person.
//
// Each session writes one file of its own, locked while it lives. A file without a living owner is the work
// of a session that ended badly. Taking it over changes its owner and nothing else: should the next session
// end badly too, it is still there.
#pragma once

#include <QLockFile>
#include <QString>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace roundlay::window {

struct Rescued {
    QString file;        ///< of the recovery folder; each session keeps its work in one of its own
    QString path, title; ///< of the document; path is empty where it was never saved
    std::string text;
    std::optional<std::string> on_disk; ///< what the document's file held for that session
};

class Recovery {
  public:
    explicit Recovery(QString folder);

    static QString usual_folder();

    /// What sessions that ended badly have left, newest first. Unreadable files are left where they are.
    std::vector<Rescued> left_behind() const;

    bool take_over(const Rescued &work); ///< false where another session was quicker
    void forget(const Rescued &work);    ///< the person does not want it

    /// Writes the session's unsaved work. The last state is replaced as a whole or not at all; false where
    /// the disk does not take it.
    bool keep(const Rescued &work);
    void clear(); ///< saved, or thrown away by the person

  private:
    QString new_file() const;
    bool own(const QString &file);

    QString folder_;
    QString file_; ///< of this session; empty = nothing kept yet
    std::unique_ptr<QLockFile> lock_;
};

} // namespace roundlay::window
