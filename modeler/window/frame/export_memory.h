// What was stated at a document's last export, kept with the other settings of the window.
#pragma once

#include <QString>

namespace roundlay::window {

class ExportMemory {
  public:
    /// `document`: its path. Of a document that was never saved nothing is kept.
    explicit ExportMemory(const QString &document);

    QString stated(const QString &option) const; ///< empty where nothing is
    void keep(const QString &option, const QString &stated);

  private:
    QString key_;
};

} // namespace roundlay::window
