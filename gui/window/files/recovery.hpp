// SPDX-License-Identifier: GPL-3.0-or-later
// What has not been saved survives a crash: a copy beside the settings, named after nobody, whose
// lock says whether the window it belongs to still lives.
#pragma once

#include <QDateTime>
#include <QLockFile>
#include <QString>
#include <QVector>
#include <memory>
#include <string>

namespace gui {

struct Leftover {
  QString file;  // the copy
  QString path;  // of the plan it was opened from; "" if never saved
  std::string text;
  QDateTime written;  // local time
};

class Recovery {
 public:
  explicit Recovery(const QString& folder);  // made if it is not there
  ~Recovery();

  // Throws rigs::FileError.
  void keep(const std::string& text, const QString& path);
  void discard();

  // Copies of windows that are gone. Each is returned to one caller only, until it is forgotten.
  QVector<Leftover> leftovers();
  void forget(const Leftover& leftover);

  static QString usualFolder();
  QString folder() const { return folder_; }

 private:
  QString folder_;
  QString file_;
  std::unique_ptr<QLockFile> lock_;
  std::vector<std::unique_ptr<QLockFile>> taken_;
};

}  // namespace gui
