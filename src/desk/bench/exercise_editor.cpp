// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/exercise_editor.hpp"

#include "desk/bench/exercise_line.hpp"
#include "desk/frame/words.hpp"

#include <QAbstractItemView>
#include <QCompleter>
#include <QKeyEvent>
#include <QStandardItemModel>

#include <vector>

namespace bw {

namespace {
constexpr int kIdRole = Qt::UserRole + 1;
const QString kNew = QStringLiteral("+");

QString about(const Gym& gym, const Exercise& e) {
    QStringList words;
    if (e.retired) words << ExerciseEditor::tr("retired");
    words << patternName(e.patterns.largest());
    if (!e.needs.empty() && !e.needs.front().empty()) {
        const KitItem* item = gym.findKit(e.needs.front().front().kit);
        words << plain(item ? item->name : e.needs.front().front().kit.text()).toLower();
    }
    return words.join(QStringLiteral(" · "));
}
} // namespace

ExerciseEditor::ExerciseEditor(const Gym& gym, SearchWish wish, QWidget* parent)
    : CellEditor(parent), gym_(gym), wish_(std::move(wish)), completer_(new QCompleter(this)),
      list_(new QStandardItemModel(this)) {
    completer_->setModel(list_);
    completer_->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
    completer_->setMaxVisibleItems(10);
    completer_->setWidget(this);
    completer_->popup()->setMinimumWidth(420);
    completer_->popup()->setItemDelegate(new ExerciseLine(completer_->popup()));
    completer_->popup()->setAccessibleName(tr("Exercises that fit what is typed"));
    completer_->popup()->installEventFilter(this); // after the completer's own: asked first
    connect(this, &QLineEdit::textEdited, this, &ExerciseEditor::look);
    connect(completer_, qOverload<const QModelIndex&>(&QCompleter::activated), this,
            [this](const QModelIndex& i) {
                taken_ = i.data(kIdRole).toString();
                Q_EMIT taken(0);
            });
    connect(completer_, qOverload<const QModelIndex&>(&QCompleter::highlighted), this,
            [this] { Q_EMIT lit(chosen()); });
}

void ExerciseEditor::fill() {
    list_->clear();
    const std::string typed = text().trimmed().toStdString();
    std::vector<const Exercise*> hits = searchShelf(gym_, typed, wish_, 40);
    const Exercise* named = exerciseNamed(gym_.shelf, typed);
    if (named && named->retired) hits.insert(hits.begin(), named); // only when asked for by name
    for (const Exercise* e : hits) {
        auto* item = new QStandardItem(plain(e->name));
        item->setData(about(gym_, *e), ExerciseLine::kAboutRole);
        item->setData(plain(e->name) + QStringLiteral(", ") + about(gym_, *e),
                      Qt::AccessibleTextRole);
        item->setData(plain(e->id.text()), kIdRole);
        list_->appendRow(item);
    }
    if (offersNew_ && !typed.empty() && !named) {
        auto* add = new QStandardItem(tr("Add “%1” to the Shelf").arg(text().trimmed()));
        add->setData(kNew, kIdRole);
        list_->appendRow(add);
    }
}

void ExerciseEditor::look() {
    taken_.clear();
    fill();
    if (list_->rowCount() == 0) {
        completer_->popup()->hide();
        return;
    }
    QRect at = rect();
    at.setWidth(qMax(at.width(), 420));
    completer_->complete(at);
    completer_->popup()->setCurrentIndex(completer_->completionModel()->index(0, 0));
    Q_EMIT lit(chosen());
}

QString ExerciseEditor::litId() const {
    if (!taken_.isEmpty()) return taken_;
    const QModelIndex i = completer_->popup()->currentIndex();
    return completer_->popup()->isVisible() && i.isValid() ? i.data(kIdRole).toString() : QString();
}

const Exercise* ExerciseEditor::chosen() const {
    const QString id = litId();
    if (id.isEmpty()) return exerciseNamed(gym_.shelf, text().toStdString());
    const auto parsed = ExerciseId::parse(id.toStdString());
    return parsed ? gym_.shelf.find(*parsed) : nullptr;
}

bool ExerciseEditor::wantsNew() const { return litId() == kNew; }

void ExerciseEditor::take(int step) {
    taken_ = litId();
    completer_->popup()->hide();
    Q_EMIT taken(step);
}

bool ExerciseEditor::eventFilter(QObject* object, QEvent* event) {
    if (object == completer_->popup() && event->type() == QEvent::KeyPress && !litId().isEmpty()) {
        switch (static_cast<QKeyEvent*>(event)->key()) {
        case Qt::Key_Return:
        case Qt::Key_Enter: take(0); return true;
        case Qt::Key_Tab: take(1); return true;
        case Qt::Key_Backtab: take(-1); return true;
        default: break;
        }
    }
    return CellEditor::eventFilter(object, event);
}

} // namespace bw
