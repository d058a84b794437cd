// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/shelf/family_view.hpp"

#include "desk/bench/exercise_editor.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"

#include <QKeyEvent>
#include <QPainter>

#include <algorithm>
#include <utility>

namespace bw {

namespace {
constexpr int kEdge = 12, kBetween = 28, kBelow = 5, kRule = 8, kPlus = 26;
constexpr int kSwapsAcross = 3;
constexpr Kin kKins[] = {Kin::Easier, Kin::Harder, Kin::Swap};

struct Columns {
    explicit Columns(int width) : wide(std::max(40, (width - 2 * kEdge - 2 * kBetween) / 3)) {}
    [[nodiscard]] int left(int column) const { return kEdge + column * (wide + kBetween); }
    int wide;
};
} // namespace

FamilyView::FamilyView(OpenGym& gym, QWidget* parent)
    : QWidget(parent), gym_(gym), self_(make({})) {
    setAccessibleName(tr("Family of the exercise"));
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setFocusProxy(self_);
    self_->hide();
}

FamilyView::~FamilyView() { std::exchange(editor_, nullptr); }

FamilyNode* FamilyView::make(FamilyNode::Who who) {
    auto* node = new FamilyNode(std::move(who), this);
    connect(node, &FamilyNode::clicked, this, [this, node] { take(node); });
    connect(node, &FamilyNode::moved, this, [this, node](int dx, int dy) { walk(node, dx, dy); });
    connect(node, &FamilyNode::removeWanted, this, [this, node] { remove(node); });
    connect(node, &FamilyNode::left, this, &FamilyView::left);
    connect(node, &FamilyNode::leaving, this, [this] { self_->setFocus(); });
    return node;
}

void FamilyView::addKinOf(const Exercise& e, Kin kin) {
    for (const ExerciseId& id : kinOf(e, kin)) {
        const Exercise* other = gym_.gym().shelf.find(id);
        const QString name = plain(other ? other->name : id.text());
        const QString said = !other           ? tr("%1 (not on the Shelf)").arg(name)
                             : other->retired ? tr("%1 (retired)").arg(name)
                                              : name;
        nodes_.push_back(make({kin, id, said, !other || other->retired}));
    }
    if (gym_.file().writable()) nodes_.push_back(make({kin, {}, {}, false}));
}

void FamilyView::show(std::optional<ExerciseId> id) {
    const bool had = std::any_of(nodes_.begin(), nodes_.end(),
                                 [](const FamilyNode* node) { return node->hasFocus(); });
    endTyping(false);
    const auto before = std::exchange(nodes_, {});
    id_ = std::move(id);
    const Exercise* e = id_ ? gym_.gym().shelf.find(*id_) : nullptr;
    self_->setVisible(e);
    if (e) {
        self_->setWho({{}, e->id, plain(e->name), e->retired});
        nodes_.push_back(self_);
        for (const Kin kin : kKins) addKinOf(*e, kin);
        if (had) self_->setFocus();
    }
    for (FamilyNode* node : before)
        if (node != self_) {
            node->hide();
            node->deleteLater(); // it may be the one that was clicked
        }
    for (FamilyNode* node : nodes_) node->show();
    updateGeometry();
    layOut(width(), true);
    update();
}

std::vector<FamilyNode*> FamilyView::nodesOf(std::optional<Kin> kin) const {
    std::vector<FamilyNode*> out;
    for (FamilyNode* node : nodes_)
        if (node->who().kin == kin) out.push_back(node);
    return out;
}

// One over the other, around the middle; their height.
int FamilyView::stack(Kin kin, int left, int wide, int middle, bool place) const {
    const auto nodes = nodesOf(kin);
    int high = -kBelow;
    for (const FamilyNode* node : nodes) high += node->heightFor(wide) + kBelow;
    if (!place) return high;
    int top = middle - high / 2;
    for (FamilyNode* node : nodes) {
        const int own = node->heightFor(wide);
        const int plus = kin == Kin::Easier ? left + wide - kPlus : left;
        if (node->who().exercise)
            node->setGeometry(left, top, wide, own);
        else
            node->setGeometry(plus, top, kPlus, own);
        top += own + kBelow;
    }
    return high;
}

int FamilyView::layOut(int width, bool place) const {
    if (nodes_.empty()) return 0;
    const Columns columns(width);
    const int caption = QFontMetrics(smallFont(font())).height() + 4;
    const int own = nodes_.front()->heightFor(columns.wide);
    const int tallest = std::max({own, stack(Kin::Easier, 0, columns.wide, 0, false),
                                  stack(Kin::Harder, 0, columns.wide, 0, false)});
    const int middle = caption + tallest / 2;
    if (place) {
        stack(Kin::Easier, columns.left(0), columns.wide, middle, true);
        stack(Kin::Harder, columns.left(2), columns.wide, middle, true);
        nodes_.front()->setGeometry(columns.left(1), middle - own / 2, columns.wide, own);
    }
    int top = caption + tallest + kRule + caption, high = 0, column = 0;
    for (FamilyNode* node : nodesOf(Kin::Swap)) {
        if (column == kSwapsAcross) {
            top += high + kBelow;
            high = column = 0;
        }
        const int tall = node->heightFor(columns.wide);
        const int wide = node->who().exercise ? columns.wide : kPlus;
        if (place) node->setGeometry(columns.left(column), top, wide, tall);
        high = std::max(high, tall);
        ++column;
    }
    return top + high + kBelow;
}

int FamilyView::heightForWidth(int width) const { return layOut(width, false); }
QSize FamilyView::sizeHint() const { return {360, heightForWidth(std::max(360, width()))}; }

void FamilyView::resizeEvent(QResizeEvent*) { layOut(width(), true); }

void FamilyView::paintEvent(QPaintEvent*) {
    if (nodes_.empty()) return;
    const Columns columns(width());
    QPainter p(this);
    p.setFont(smallFont(font()));
    p.setPen(inks().quiet);
    const int high = p.fontMetrics().height();
    p.drawText(QRect(columns.left(0), 2, columns.wide, high), Qt::AlignRight, tr("← easier"));
    p.drawText(QRect(columns.left(2), 2, columns.wide, high), Qt::AlignLeft, tr("harder →"));
    p.setPen(QPen(inks().quiet, 1));
    const QRect self = nodes_.front()->geometry();
    int swapTop = height();
    for (const FamilyNode* node : nodes_) {
        const auto& who = node->who();
        const QRect r = node->geometry();
        if (who.kin == Kin::Swap) swapTop = std::min(swapTop, r.top());
        if (!who.exercise || !who.kin || who.kin == Kin::Swap) continue;
        const bool left = who.kin == Kin::Easier;
        const QPoint from(left ? self.left() : self.right(), self.center().y());
        p.drawLine(from, QPoint(left ? r.right() : r.left(), r.center().y()));
    }
    if (swapTop == height()) return;
    const int rule = swapTop - high - 4;
    p.drawText(QRect(columns.left(0), rule + 2, columns.wide, high), Qt::AlignLeft, tr("swaps"));
    p.setPen(QPen(inks().quiet, 1, Qt::DotLine));
    p.drawLine(self.center().x(), self.bottom(), self.center().x(), rule);
    p.drawLine(columns.left(0), rule, columns.left(2) + columns.wide, rule);
}

// From the exercise out to its kin; along them; and back in.
void FamilyView::walk(FamilyNode* from, int dx, int dy) {
    const auto to = [](FamilyNode* node) { node->setFocus(); };
    const auto kin = from->who().kin;
    const bool in = (kin == Kin::Easier && dx > 0) || (kin == Kin::Harder && dx < 0) ||
                    (kin == Kin::Swap && dy < 0);
    if (in) return to(self_);
    if (!kin && dy < 0) return;
    const auto out = dx < 0 ? Kin::Easier : dx > 0 ? Kin::Harder : Kin::Swap;
    const auto list = nodesOf(kin ? *kin : out);
    if (!kin) return list.empty() ? void() : to(list.front());
    const auto at = std::find(list.begin(), list.end(), from) - list.begin();
    const auto next = at + (kin == Kin::Swap ? dx : dy);
    if (next >= 0 && next < static_cast<std::ptrdiff_t>(list.size()))
        return to(list[static_cast<std::size_t>(next)]);
    const auto below = nodesOf(Kin::Swap);
    if (dy > 0 && kin != Kin::Swap && !below.empty()) to(below.front());
}

void FamilyView::take(FamilyNode* node) {
    if (!node->who().exercise) return type(node);
    if (!node->who().kin) return;
    const ExerciseId id = *node->who().exercise;
    if (gym_.gym().shelf.find(id)) Q_EMIT wanted(id);
}

void FamilyView::remove(FamilyNode* node) {
    const auto who = node->who();
    if (!id_ || !who.kin || !who.exercise || !gym_.file().writable()) return;
    if (const Did did = removeKin(gym_, *id_, *who.kin, *who.exercise); !did)
        Q_EMIT refused(did.why());
}

void FamilyView::type(FamilyNode* node) {
    const Exercise* e = id_ ? gym_.gym().shelf.find(*id_) : nullptr;
    if (!e) return;
    endTyping(false);
    typed_ = *node->who().kin;
    editor_ = new ExerciseEditor(gym_.gym(), {{}, {e->patterns.largest()}}, this);
    editor_->offerNew(false);
    editor_->setAccessibleName(node->accessibleName());
    editor_->setPlaceholderText(tr("%1: a name", "easier").arg(kinName(typed_)));
    const int wide = std::min(width(), std::max(180, width() / 2));
    const int left = std::clamp(node->x(), 0, width() - wide);
    editor_->setGeometry(left, node->y(), wide, editor_->sizeHint().height());
    editor_->installEventFilter(this);
    connect(editor_, &ExerciseEditor::taken, this, [this] { endTyping(true); });
    connect(editor_, &QLineEdit::textEdited, this, [this] {
        editor_->setTrouble({});
        Q_EMIT clear();
    });
    editor_->show();
    editor_->setFocus();
}

// Entering what is not on the Shelf says so and stays open.
void FamilyView::endTyping(bool enter) {
    if (!editor_) return;
    const Exercise* chosen = enter ? editor_->chosen() : nullptr;
    if (enter && !chosen) {
        const Message why{"“%1” is not on the Shelf: choose a line of the list, or add it first.",
                          {editor_->text().toStdString()}};
        editor_->setTrouble(say(why));
        return Q_EMIT refused(why);
    }
    const auto other = chosen ? std::optional(chosen->id) : std::nullopt;
    ExerciseEditor* editor = std::exchange(editor_, nullptr);
    editor->removeEventFilter(this);
    const bool focused = editor->hasFocus() || enter;
    editor->hide();
    editor->deleteLater();
    if (focused && !nodes_.empty()) nodes_.front()->setFocus();
    if (!other || !id_) return;
    if (const Did did = addKin(gym_, *id_, typed_, *other); !did) Q_EMIT refused(did.why());
}

bool FamilyView::eventFilter(QObject* object, QEvent* event) {
    if (object != editor_) return QWidget::eventFilter(object, event);
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Escape) {
            Q_EMIT clear();
            endTyping(key != Qt::Key_Escape);
            return true;
        }
    }
    const bool popup = event->type() == QEvent::FocusOut &&
                       static_cast<QFocusEvent*>(event)->reason() == Qt::PopupFocusReason;
    if (event->type() == QEvent::FocusOut && !popup) endTyping(false);
    return QWidget::eventFilter(object, event);
}

} // namespace bw
