// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/files/recovery.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>
#include <QUuid>
#include <algorithm>

#include "rigs/documents/files.hpp"

namespace gui {
namespace {

constexpr const char* kSuffix = ".unsaved";

QString lockOf(const QString& file) { return file + QStringLiteral(".lock"); }

std::unique_ptr<QLockFile> lockFor(const QString& file) {
  auto lock = std::make_unique<QLockFile>(lockOf(file));
  lock->setStaleLockTime(0);  // a window may stay open for days; only its process counts
  return lock;
}

}  // namespace

Recovery::Recovery(const QString& folder) : folder_(folder) {
  QDir().mkpath(folder_);
  // What was typed is nobody else's business.
  QFile::setPermissions(folder_, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
  rigs::removeStaleDrafts(folder_.toStdString());
  file_ = QDir(folder_).filePath(QUuid::createUuid().toString(QUuid::WithoutBraces) +
                                 QLatin1String(kSuffix));
  lock_ = lockFor(file_);
}

Recovery::~Recovery() = default;

QString Recovery::usualFolder() {
  return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation) +
         QStringLiteral("/unsaved");
}

// First line: the path, percent-encoded; then the document as it is.
void Recovery::keep(const std::string& text, const QString& path) {
  if (!lock_->isLocked()) lock_->tryLock(0);
  rigs::saveText(file_.toStdString(),
                 path.toUtf8().toPercentEncoding("/").toStdString() + "\n" + text);
}

void Recovery::discard() {
  QFile::remove(file_);
  if (lock_->isLocked()) lock_->unlock();
}

QVector<Leftover> Recovery::leftovers() {
  QVector<Leftover> found;
  const QFileInfoList files = QDir(folder_).entryInfoList(
      {QLatin1Char('*') + QLatin1String(kSuffix)}, QDir::Files, QDir::Time);
  for (const QFileInfo& info : files) {
    const QString file = info.absoluteFilePath();
    if (QFileInfo(file_) == info) continue;
    auto lock = lockFor(file);
    if (!lock->tryLock(0)) continue;  // its window lives, or another one is asking just now
    try {
      // The largest plan, and the line before it.
      const std::string all = rigs::readFile(file.toStdString(), rigs::kLargestFile + 65536);
      const std::size_t end = std::min(all.find('\n'), all.size() - 1);
      if (all.empty()) continue;
      found.push_back({.file = file,
                       .path = QString::fromUtf8(QByteArray::fromPercentEncoding(
                           QByteArray::fromStdString(all.substr(0, end)))),
                       .text = all.substr(end + 1),
                       .written = info.lastModified()});
      taken_.push_back(std::move(lock));
    } catch (const rigs::FileError&) {
      continue;  // unreadable is as good as gone
    }
  }
  return found;
}

void Recovery::forget(const Leftover& leftover) {
  QFile::remove(leftover.file);
  std::erase_if(taken_,
                [&](const auto& lock) { return lock->fileName() == lockOf(leftover.file); });
}

}  // namespace gui
