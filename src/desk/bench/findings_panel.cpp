// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/findings_panel.hpp"

#include "blockwright/rules/rule.hpp"
#include "desk/bench/accepted_fold.hpp"
#include "desk/bench/minute_rail_words.hpp"
#include "desk/bench/reason_line.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"
#include "edit/finding_verbs.hpp"

#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QStackedLayout>

#include <algorithm>

namespace bw {

namespace {
constexpr int kNarrowest = 270; // figures and gauge stand beside each other

QString measuredTitles() {
    QString items;
    for (const Rule& rule : ruleBook())
        items += QStringLiteral("<p style=\"margin-top:3px;margin-bottom:0\">%1</p>")
                     .arg(say(rule.title).toHtmlEscaped());
    return items;
}

QString keyOf(const Finding& finding) { return plain(finding.rule + "." + finding.limitName); }
} // namespace

FindingsPanel::FindingsPanel(Draft& draft, QWidget* parent)
    : QWidget(parent), draft_(draft), model_(new FindingsModel(this)),
      list_(new FindingsList(*model_, this)), reason_(new ReasonLine(this)),
      accepted_(new AcceptedFold(this)), empty_(nullptr),
      behind_(new QLabel(tr("simulating the class…"), this)), body_(new QStackedLayout) {
    assemble();
    setMinimumWidth(kNarrowest);
    setFocusProxy(list_);
    wire();
    refresh();
}

void FindingsPanel::assemble() {
    auto* title = new QLabel(tr("Findings"), this);
    QFont bold = title->font();
    bold.setBold(true);
    title->setFont(bold);
    title->setBuddy(list_);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(12, 8, 12, 6);
    head->addWidget(title);
    head->addStretch(1);
    head->addWidget(behind_);
    behind_->setObjectName(QStringLiteral("floor-behind"));
    behind_->setToolTip(behind_->text());
    behind_->setEnabled(false); // the quiet colour
    behind_->hide();
    blink_.setSingleShot(true);
    body_->addWidget(list_);
    body_->addWidget(makeEmpty());
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(head);
    column->addLayout(body_, 1);
    column->addWidget(reason_);
    column->addWidget(accepted_);
}

void FindingsPanel::wire() {
    connect(&blink_, &QTimer::timeout, behind_, &QWidget::show);
    connect(list_, &FindingsList::chosen, this, &FindingsPanel::choose);
    connect(list_, &FindingsList::goWanted, this, &FindingsPanel::go);
    connect(list_, &FindingsList::tryWanted, this, &FindingsPanel::tryIt);
    connect(list_, &FindingsList::acceptWanted, this, &FindingsPanel::ask);
    connect(list_, &FindingsList::limitWanted, this,
            [this](int row) { Q_EMIT limitWanted(keyOf(model_->at(row).finding)); });
    connect(list_, &FindingsList::ruleWanted, this,
            [this](int row) { Q_EMIT ruleWanted(plain(model_->at(row).finding.rule)); });
    connect(reason_, &ReasonLine::given, this, &FindingsPanel::accept);
    connect(reason_, &ReasonLine::left, list_,
            [this] { (cameFrom_ ? cameFrom_.data() : list_)->setFocus(); });
    connect(accepted_, &AcceptedFold::chosen, this,
            [this](int row) { draft_.setPlace(accepted_->at(row).finding.place); });
    connect(accepted_, &AcceptedFold::goWanted, this, [this](int row) {
        draft_.setPlace(accepted_->at(row).finding.place);
        Q_EMIT picked(draft_.place());
    });
    connect(accepted_, &AcceptedFold::takeBackWanted, this, &FindingsPanel::takeItBack);
    connect(accepted_, &AcceptedFold::limitWanted, this,
            [this](int row) { Q_EMIT limitWanted(keyOf(accepted_->at(row).finding)); });
    connect(accepted_, &AcceptedFold::ruleWanted, this,
            [this](int row) { Q_EMIT ruleWanted(plain(accepted_->at(row).finding.rule)); });
    connect(&draft_, &Draft::changed, this, &FindingsPanel::refresh);
}

QWidget* FindingsPanel::makeEmpty() {
    auto* area = new QScrollArea(this);
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::StrongFocus);
    area->setAccessibleName(tr("Findings"));
    empty_ = new QLabel(area);
    empty_->setObjectName(QStringLiteral("nothing"));
    empty_->setWordWrap(true);
    empty_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    empty_->setContentsMargins(12, 4, 12, 12);
    empty_->setBackgroundRole(QPalette::Base);
    area->setWidget(empty_);
    return area;
}

void FindingsPanel::refresh() {
    list_->renew([this] {
        if (draft_.block())
            model_->show(draft_.verdict().findings, *draft_.block());
        else
            model_->clear();
    });
    accepted_->renew(draft_.verdict().accepted, draft_.block());
    if (!asked_.isValid()) reason_->leave();
    const bool none = model_->rowCount() == 0;
    if (none) showEmpty();
    body_->setCurrentIndex(none ? 1 : 0);
}

void FindingsPanel::showEmpty() {
    if (!draft_.block())
        return empty_->setText(tr("There is no month yet. Start one, and what the rule book finds "
                                  "in it will stand here."));
    const ExactTime planned = draft_.time().total.planned;
    const bool left = !draft_.verdict().accepted.empty();
    const QString fits =
        (left ? tr("Nothing is left to look at: the session is planned at %1 of %2 minutes, and "
                   "what it does not keep, you have accepted.")
              : tr("Nothing to look at: the session is planned at %1 of %2 minutes, and keeps "
                   "every limit in every week."))
            .arg(railClock(planned))
            .arg(draft_.gym().gym().settings.classMinutes);
    const QString text = QStringLiteral("<p>%1</p><p style=\"color:%2\">%3</p>"
                                        "<div style=\"color:%2\">%4</div>")
                             .arg(fits.toHtmlEscaped(), inks().quiet.name(),
                                  tr("What was measured:").toHtmlEscaped(), measuredTitles());
    if (empty_->text() != text) empty_->setText(text);
}

void FindingsPanel::setFloorBehind(bool behind) {
    constexpr int kBlink = 600; // milliseconds
    if (!behind) {
        blink_.stop();
        behind_->hide();
    } else if (!behind_->isVisibleTo(this) && !blink_.isActive()) {
        blink_.start(kBlink);
    }
}

const Finding* FindingsPanel::current() const {
    const FindingRow* row = list_->current();
    return row ? &row->finding : nullptr;
}

bool FindingsPanel::nextFinding(int step) {
    const int n = model_->rowCount();
    if (n == 0) return false;
    const int now = list_->currentIndex().row();
    const int next = now < 0 ? (step > 0 ? 0 : n - 1) : ((now + step) % n + n) % n;
    if (next == now)
        choose(now);
    else
        list_->setCurrentIndex(model_->index(next, 0));
    return true;
}

void FindingsPanel::choose(int row) { draft_.setPlace(model_->at(row).finding.place); }

void FindingsPanel::go(int row) {
    const Place place = model_->at(row).finding.place;
    draft_.setPlace(place);
    Q_EMIT picked(place);
}

void FindingsPanel::tryIt(int row, int action) {
    const FindingRow& found = model_->at(row);
    const Remedy* offered = found.action(action);
    if (!offered || !draft_.month()) return;
    const Remedy remedy = *offered; // the row changes while it is done
    const Did did = applyRemedy(draft_.gym(), *draft_.month(), remedy, found.finding.place);
    if (!did) Q_EMIT failed(did.why());
}

QSize FindingsPanel::sizeHint() const { return minimumSizeHint(); }

QString FindingsPanel::limitKey() const {
    const Finding* now = current();
    return now && !now->limitName.empty() ? keyOf(*now) : QString();
}

void FindingsPanel::askWhy() {
    if (list_->current()) ask(list_->currentIndex().row());
}

void FindingsPanel::ask(int row) {
    if (!reason_->isAncestorOf(QApplication::focusWidget()))
        cameFrom_ = QApplication::focusWidget();
    asked_ = model_->index(row);
    list_->setCurrentIndex(asked_);
    reason_->ask(model_->at(row).where);
}

void FindingsPanel::accept(const QString& reason) {
    if (!asked_.isValid() || !draft_.month()) return reason_->leave();
    const int row = asked_.row();
    const Finding finding = model_->at(row).finding; // its row goes
    const Did did = acceptFinding(draft_.gym(), *draft_.month(), finding, reason.toStdString());
    if (!did) return reason_->tell(say(did.why()));
    list_->putCurrent(std::min(row, model_->rowCount() - 1)); // the next one is at hand
    reason_->leave();
}

void FindingsPanel::takeItBack(int row) {
    if (!draft_.month()) return;
    const Finding finding = accepted_->at(row).finding;
    const Did did = takeBack(draft_.gym(), *draft_.month(), finding);
    if (!did) Q_EMIT failed(did.why());
}

void FindingsPanel::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::PaletteChange || !empty_) return;
    if (model_->rowCount() == 0) showEmpty();
}

} // namespace bw
