// SPDX-License-Identifier: GPL-3.0-or-later
// The questions one below the other, each with its shortest answer: the list is the overview. Up,
// down and the page keys go from one to the next.
#pragma once

#include <QFont>
#include <QListWidget>
#include <QString>
#include <QVector>

namespace gui {

class QuestionColumn : public QListWidget {
  Q_OBJECT

 public:
  struct Entry {
    QString question;
    QString shortly;  // where room is short
    QString answer;   // "" while it is not known
    QString whole;    // told at the pointer and to screen readers, over several lines

    bool operator==(const Entry&) const = default;
  };
  // What is painted of a row, and where: for the painter and whoever wants to know.
  struct Piece {
    enum class Kind { Question, Answer, Mark };
    Kind kind;
    QString text;
    QFont font;
    QRect room;
  };

  explicit QuestionColumn(QWidget* parent = nullptr);

  void fill(const QVector<Entry>& entries);
  const Entry& entry(int row) const { return entries_[row]; }
  // A word or two at every question, in reversed ink; "" takes them away. Every answer tells of
  // every rig, so that what is wrong with one stands at all of them.
  void setMark(const QString& mark);
  QString mark() const { return mark_; }
  // Short names without answers, for narrow windows.
  void setFolded(bool folded);
  bool isFolded() const { return folded_; }
  // Of all questions with their answers, px.
  int unfoldedHeight() const;

  // Within the row, as wide as the column is now.
  QVector<Piece> piecesOf(int row) const;
  int heightOf(int row) const;

 protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  int em() const;
  QVector<Piece> piecesOf(int row, bool folded, int wide) const;
  int heightOf(const QVector<Piece>& pieces) const;
  void spreadShortNames();
  void layOut();

  QVector<Entry> entries_;
  QString mark_;
  bool folded_ = false;
  int aboveShort_ = 0;  // and below, px
};

}  // namespace gui
