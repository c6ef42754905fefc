// SPDX-License-Identifier: GPL-3.0-or-later
// The exports that programs read.
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "gui/window/exports/exports.hpp"
#include "rigs/quantities/quantity_text.hpp"
#include "rigs/results/result_json.hpp"

namespace gui {
namespace {

QString number(double n) {
  return QString::fromStdString(rigs::formatNumber(n, {.significantDigits = 15, .decimals = {}}));
}

// A decimal comma becomes a point where the whole cell is one number.
QString plainCell(const QString& cell) {
  if (cell == QStringLiteral("–")) return {};  // no such figure
  if (cell.count(u',') != 1) return cell;
  QString pointed = cell;
  pointed.replace(u',', u'.');
  bool isNumber = false;
  pointed.toDouble(&isNumber);
  return isNumber ? pointed : cell;
}

QString field(const QString& text) {
  QString safe = text;
  safe.replace(u'\n', u' ').replace(u'\r', u' ');
  bool isNumber = false;
  safe.toDouble(&isNumber);
  // A spreadsheet would run such text as a formula.
  if (!isNumber && !safe.isEmpty() && QStringLiteral("=+-@").contains(safe.front())) {
    safe.prepend(u'\'');
  }
  if (!safe.contains(u',') && !safe.contains(u'"')) return safe;
  return u'"' + safe.replace(u'"', QLatin1String("\"\"")) + u'"';
}

void addLine(QString& csv, const QStringList& fields) {
  QStringList safe;
  for (const QString& one : fields) safe.push_back(field(one));
  csv += safe.join(u',') + u'\n';
}

QString nameOf(int rig, const QString& name) {
  return rig < 0 || name.startsWith(letterOfRig(rig)) ? name : letterOfRig(rig) + u' ' + name;
}

void addPicture(QString& csv, const Picture& picture) {
  const auto point = [&](const QString& line, const QString& x, double y) {
    addLine(csv, {picture.title, line, x, number(y)});
  };
  addLine(csv, {QStringLiteral("picture"), QStringLiteral("line"), picture.xTitle, picture.yTitle});
  for (const PictureLine& line : picture.lines) {
    for (const QPointF& p : line.points) point(nameOf(line.rig, line.name), number(p.x()), p.y());
  }
  for (qsizetype part = 0; part < picture.areas.size(); ++part) {
    for (const QPointF& p : picture.areas[part]) {
      point(picture.partNames.value(part), number(p.x()), p.y());
    }
  }
  for (const PictureStack& stack : picture.stacks) {
    for (qsizetype part = 0; part < stack.parts.size(); ++part) {
      point(nameOf(stack.rig, stack.name), picture.partNames.value(part), stack.parts[part]);
    }
  }
}

QJsonArray pair(double x, double y) { return {x, y}; }

QJsonArray pointsJson(const QVector<QPointF>& all) {
  QJsonArray list;
  for (const QPointF& p : all) list.push_back(pair(p.x(), p.y()));
  return list;
}

// One object for each of `all`, left out where there is none.
template <class Things, class Write>
void addAll(QJsonObject& json, const char* key, const Things& all, Write write) {
  QJsonArray list;
  for (const auto& one : all) list.push_back(write(one));
  if (!list.isEmpty()) json.insert(QLatin1String(key), list);
}

// Rigs are counted from 1, as people do.
QJsonObject pictureJson(const Picture& picture) {
  QJsonObject json{{"title", picture.title}, {"x", picture.xTitle}, {"y", picture.yTitle}};
  addAll(json, "lines", picture.lines, [](const PictureLine& line) {
    return QJsonObject{
        {"rig", line.rig + 1}, {"name", line.name}, {"points", pointsJson(line.points)}};
  });
  addAll(json, "marks", picture.marks, [](const PictureMark& mark) {
    return QJsonObject{
        {"rig", mark.rig + 1}, {"at", pair(mark.at.x(), mark.at.y())}, {"label", mark.label}};
  });
  addAll(json, "bands", picture.bands, [](const PictureBand& band) {
    return QJsonObject{{"along", band.alongX ? "x" : "y"},
                       {"from", band.from},
                       {"to", band.to},
                       {"label", band.label},
                       {"source", band.source}};
  });
  addAll(json, "limits", picture.limits, [](const PictureLimit& limit) {
    return QJsonObject{{"x", limit.x}, {"label", limit.label}};
  });
  qsizetype part = 0;
  addAll(json, "areas", picture.areas, [&](const QVector<QPointF>& area) {
    return QJsonObject{{"name", picture.partNames.value(part++)}, {"points", pointsJson(area)}};
  });
  addAll(json, "stacks", picture.stacks, [&](const PictureStack& stack) {
    QJsonObject parts;
    for (qsizetype i = 0; i < stack.parts.size(); ++i) {
      parts.insert(picture.partNames.value(i), stack.parts[i]);
    }
    return QJsonObject{{"rig", stack.rig + 1}, {"name", stack.name}, {"parts", parts}};
  });
  if (picture.draggable) {
    json.insert("wanted",
                QJsonObject{{"y", *picture.draggable}, {"label", picture.draggableLabel}});
  }
  return json;
}

QJsonObject tableJson(const PictureTable& table) {
  QJsonObject json{{"head", QJsonArray::fromStringList(table.head)}};
  addAll(json, "rows", table.rows,
         [](const QVector<QString>& row) { return QJsonArray::fromStringList(row); });
  return json;
}

// Computed anew without curves: keeping them makes the integrator stop more often, which shows in
// the twelfth digit, and these are to be the terminal's bytes.
std::string resultText(const rigs::Plan& plan, Question question) {
  const rigs::Depth depth = question == Question::Circuit ? rigs::Depth::Circuit
                            : question == Question::Room  ? rigs::Depth::Room
                                                          : rigs::Depth::Everything;
  return rigs::resultJson(plan, rigs::answer(plan, depth));
}

}  // namespace

QByteArray answerCsv(const Answer& answer) {
  QString csv;
  addLine(csv, QStringList(answer.table.head.begin(), answer.table.head.end()));
  for (const QVector<QString>& row : answer.table.rows) {
    QStringList cells;
    for (const QString& cell : row) cells.push_back(plainCell(cell));
    addLine(csv, cells);
  }
  for (const Picture& picture : answer.pictures) addPicture(csv, picture);
  for (const QString& note : answer.notes) addLine(csv, {QStringLiteral("note"), {}, note, {}});
  for (const QString& caution : answer.allCautions()) {
    addLine(csv, {QStringLiteral("caution"), {}, caution, {}});
  }
  return csv.toUtf8();
}

QByteArray answerJson(Question question, const Answer& answer, const Solution& solution) {
  QJsonObject seen{{"question", identifierOf(question)},
                   {"title", answer.title},
                   {"sentence", answer.sentence},
                   {"table", tableJson(answer.table)},
                   {"notes", QJsonArray::fromStringList(answer.notes)},
                   {"cautions", QJsonArray::fromStringList(answer.allCautions())}};
  addAll(seen, "pictures", answer.pictures, pictureJson);
  const QByteArray text = QJsonDocument(seen).toJson(QJsonDocument::Indented).trimmed();
  // Put together as text: the result keeps the order of its keys.
  return "{\n\"seen\": " + text + ",\n\"result\": " +
         QByteArray::fromStdString(resultText(solution.plan, question)).trimmed() + "\n}\n";
}

}  // namespace gui
