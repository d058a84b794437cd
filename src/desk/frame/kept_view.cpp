// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/kept_view.hpp"

#include "desk/frame/remembered.hpp"

#include <QEvent>
#include <QFileInfo>
#include <QSettings>
#include <QSplitter>
#include <QTimer>

#include <functional>
#include <utility>

namespace bw {

namespace {
const QString kFile = QStringLiteral("view/file"), kPlace = QStringLiteral("view/place"),
              kMonth = QStringLiteral("view/month"), kWeek = QStringLiteral("view/week");

QString nameOf(const std::filesystem::path& file) {
    return QFileInfo(pathText(file)).absoluteFilePath();
}

// By the page it is in, which has one.
QString keyOf(const QSplitter& split) {
    return QStringLiteral("split/") +
           QString::fromLatin1(split.parentWidget()->metaObject()->className())
               .remove(QStringLiteral("bw::"));
}

// Does it once, when the widget has the size it is first seen with.
class WhenShown : public QObject {
public:
    WhenShown(QWidget* widget, std::function<void()> work)
        : QObject(widget), work_(std::move(work)) {
        widget->installEventFilter(this);
    }
    bool eventFilter(QObject* widget, QEvent* event) override {
        if (event->type() == QEvent::Show) {
            widget->removeEventFilter(this);
            QTimer::singleShot(0, this, work_);
        }
        return false;
    }

private:
    std::function<void()> work_;
};
} // namespace

std::optional<KeptView> keptView(const std::filesystem::path& gymFile) {
    const QSettings kept(rememberedFile(), QSettings::IniFormat);
    if (kept.value(kFile).toString() != nameOf(gymFile)) return std::nullopt;
    KeptView view{kept.value(kPlace).toString(), {}, kept.value(kWeek).toInt()};
    if (const auto month = Month::parse(kept.value(kMonth).toString().toStdString()))
        view.month = *month;
    return view;
}

void keepView(const std::filesystem::path& gymFile, const KeptView& view) {
    QSettings kept(rememberedFile(), QSettings::IniFormat);
    kept.setValue(kFile, nameOf(gymFile));
    kept.setValue(kPlace, view.place);
    kept.setValue(kMonth, view.month ? QString::fromStdString(view.month->text()) : QString());
    kept.setValue(kWeek, view.week);
}

void keepSplits(QWidget& pages) {
    for (QSplitter* split : pages.findChildren<QSplitter*>()) {
        const QString key = keyOf(*split);
        new WhenShown(split, [split, key] {
            const QSettings kept(rememberedFile(), QSettings::IniFormat);
            split->restoreState(kept.value(key).toByteArray()); // anything else is ignored
        });
        QObject::connect(split, &QSplitter::splitterMoved, split, [split, key] {
            QSettings(rememberedFile(), QSettings::IniFormat).setValue(key, split->saveState());
        });
    }
}

} // namespace bw
