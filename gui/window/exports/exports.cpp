// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/exports/exports.hpp"

#include <QBuffer>
#include <QCoreApplication>
#include <QPainter>
#include <QSvgGenerator>
#include <algorithm>
#include <cmath>

#include "gui/window/exports/text_flow.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/documents/written_files.hpp"

namespace gui {
namespace {

constexpr qreal kMargin = 28.0;  // logical pixels
constexpr qreal kGap = 16.0;
constexpr qreal kPictureShape = 0.46;  // height over width

// The same sheet measured and drawn, so that the two cannot disagree.
class Sheet {
 public:
  Sheet(const ShownAnswer& answer, qreal width, const ChartLook& look)
      : answer_(answer),
        look_(look),
        inner_(width - 2.0 * kMargin),
        body_(qMax(12.0, std::round(width / 80.0))),
        titleFont_(sized(look.font, body_ * 1.5, true)),
        sentenceFont_(sized(look.font, body_ * 1.1)),
        cautionFont_(sized(look.font, body_ * 0.85)),
        title_(linesOf(answer.title, titleFont_, inner_)),
        sentence_(linesOf(answer.headline(), sentenceFont_, inner_)) {
    for (const QString& caution : answer.allCautions()) {
      cautions_ += linesOf(caution, cautionFont_, inner_);
    }
  }

  qreal height(qreal picture) const {
    return 2.0 * kMargin + textHeight() +
           static_cast<qreal>(answer_.pictures.size()) * (picture + kGap);
  }
  qreal usualPicture() const { return std::round(inner_ * kPictureShape); }

  void paint(QPainter& painter, const QRectF& area) const {
    const auto count = static_cast<qreal>(std::max(std::size_t{1}, answer_.pictures.size()));
    const qreal spare = area.height() - 2.0 * kMargin - textHeight() - count * kGap;
    const qreal picture = qMax(usualPicture() / 2.0, std::floor(spare / count));
    QPointF at = area.topLeft() + QPointF(kMargin, kMargin);
    painter.fillRect(area, look_.paper);
    painter.setPen(look_.ink);
    at.ry() += drawLines(painter, at, title_, titleFont_) + kGap / 2.0;
    at.ry() += drawLines(painter, at, sentence_, sentenceFont_) + kGap;
    ChartLook look = look_;
    look.font = sized(look.font, body_);
    for (const telling::Picture& one : answer_.pictures) {
      painter.save();
      drawPicture(painter, QRectF(at, QSizeF(inner_, picture)), one, look);
      painter.restore();
      at.ry() += picture + kGap;
    }
    painter.setPen(look_.ink);
    painter.drawLine(at, at + QPointF(inner_, 0.0));
    at.ry() += kGap / 2.0;
    drawLines(painter, at, cautions_, cautionFont_);
  }

 private:
  qreal textHeight() const {
    return heightOf(title_, titleFont_) + heightOf(sentence_, sentenceFont_) +
           heightOf(cautions_, cautionFont_) + 2.0 * kGap;
  }

  const ShownAnswer& answer_;
  const ChartLook& look_;
  qreal inner_, body_;
  QFont titleFont_, sentenceFont_, cautionFont_;
  QStringList title_, sentence_, cautions_;
};

QSize sheetSize(const ShownAnswer& answer, int width, const ChartLook& look) {
  return {width, static_cast<int>(std::ceil(sheetHeight(answer, width, look)))};
}

QString text(std::string_view utf8) {
  return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

QByteArray png(QImage image) {
  image.setText(QStringLiteral("Software"), text(rigs::kOwnPngMark));
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "PNG");
  return bytes;
}

std::string endingOf(const std::filesystem::path& path) {
  std::string ending = path.extension().string();
  for (char& c : ending) {
    if ('A' <= c && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return ending;
}

QByteArray contents(const std::filesystem::path& path, const SeenAnswer& seen,
                    const ChartLook& look) {
  const std::string ending = endingOf(path);
  if (ending == ".png") return png(answerImage(shown(seen), kSheetWidth, look));
  if (ending == ".svg") return answerSvg(shown(seen), kSheetWidth, look);
  if (ending == ".csv") return answerCsv(seen);
  if (ending == ".json") return answerJson(seen);
  throw rigs::FileError(rigs::Told(
      TOLD("gui::Exports",
           "%1 has an ending that is unknown here; .svg, .png, .csv or .json is accepted"),
      rigs::quotedPath(path.string())));
}

}  // namespace

qreal sheetHeight(const ShownAnswer& answer, qreal width, const ChartLook& look) {
  const Sheet sheet(answer, width, look);
  return std::ceil(sheet.height(sheet.usualPicture()));
}

void paintSheet(QPainter& painter, const QRectF& area, const ShownAnswer& answer,
                const ChartLook& look) {
  Sheet(answer, area.width(), look).paint(painter, area);
}

QImage answerImage(const ShownAnswer& answer, int width, const ChartLook& look, qreal sharpness) {
  const QSize size = sheetSize(answer, width, look);
  QImage image(size * sharpness, QImage::Format_ARGB32_Premultiplied);
  image.setDevicePixelRatio(sharpness);
  image.fill(look.paper);
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  paintSheet(painter, QRectF(QPointF(), QSizeF(size)), answer, look);
  return image;
}

QByteArray answerSvg(const ShownAnswer& answer, int width, const ChartLook& look) {
  const QSize size = sheetSize(answer, width, look);
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setSize(size);
  generator.setViewBox(QRect(QPoint(), size));
  generator.setTitle(answer.title);
  generator.setDescription(answer.headline());
  QPainter painter(&generator);
  paintSheet(painter, QRectF(QPointF(), QSizeF(size)), answer, look);
  painter.end();
  // By which a later export knows that it may replace this file.
  const qsizetype declared = bytes.indexOf("?>");
  const auto mark = static_cast<qsizetype>(rigs::kOwnSvgMark.size());
  return bytes.insert(declared < 0 ? 0 : declared + 2, rigs::kOwnSvgMark.data(), mark);
}

void exportAnswer(const std::filesystem::path& path, const SeenAnswer& seen,
                  const ChartLook& look) {
  const QByteArray bytes = contents(path, seen, look);
  rigs::saveText(path, {bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

}  // namespace gui
