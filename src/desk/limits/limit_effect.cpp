// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/limits/limit_effect.hpp"

#include "desk/bench/draft.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"
#include "desk/limits/limits_model.hpp"

#include <QEvent>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>

namespace bw {

namespace {
QString para(const QString& text, const QString& style = {}) {
    return QStringLiteral("<p style=\"margin:0 0 6px 0;%1\">%2</p>").arg(style, text);
}
QString head(const QString& text) {
    return para(text.toHtmlEscaped(),
                QStringLiteral("font-weight:600;margin-top:8px;color:%1").arg(inks().ink.name()));
}
QString quiet(const QString& text) {
    return para(text.toHtmlEscaped(), QStringLiteral("color:%1").arg(inks().quiet.name()));
}

QString shape(Level level) {
    return QStringLiteral("<span style=\"color:%1\">%2</span>")
        .arg(inks().level[static_cast<std::size_t>(level)].name(), levelShape(level));
}

QString line(const Finding& f) {
    return para(shape(f.level) + QLatin1Char(' ') + say(f.text).toHtmlEscaped());
}
QString line(const std::pair<Level, Finding>& turned) {
    return para(shape(turned.first) + QStringLiteral(" → ") + shape(turned.second.level) +
                QLatin1Char(' ') + say(turned.second.text).toHtmlEscaped());
}

template <class List> QString listed(const QString& title, const List& list) {
    if (list.empty()) return {};
    QString text = head(title.arg(list.size()));
    for (const auto& one : list) text += line(one);
    return text;
}
} // namespace

LimitEffect::LimitEffect(Draft& draft, QWidget* parent) : QTextBrowser(parent), draft_(draft) {
    setAccessibleName(tr("What the limit does to this month"));
    setFrameShape(NoFrame);
    setOpenLinks(false);
    document()->setDocumentMargin(12);
}

void LimitEffect::show(const Rule* rule, const HouseLimit* limit,
                       const std::optional<std::optional<LimitValue>>& typed) {
    rule_ = rule;
    limit_ = limit;
    typed_ = typed;
    draw();
}

void LimitEffect::paintEvent(QPaintEvent* event) {
    QTextBrowser::paintEvent(event);
    if (!hasFocus()) return;
    QPainter p(viewport());
    const double wide = inks().stroke + 1;
    p.setPen(QPen(inks().accent, wide));
    p.drawRect(QRectF(viewport()->rect()).adjusted(wide / 2, wide / 2, -wide, -wide));
}

void LimitEffect::focusInEvent(QFocusEvent* event) {
    QTextBrowser::focusInEvent(event);
    viewport()->update();
}

void LimitEffect::focusOutEvent(QFocusEvent* event) {
    QTextBrowser::focusOutEvent(event);
    viewport()->update();
}

void LimitEffect::draw() {
    if (!rule_) return clear();
    QString html = about(rule_, limit_);
    if (limit_) html += effect(*limit_, typed_);
    const int scrolled = verticalScrollBar()->value();
    setHtml(html);
    verticalScrollBar()->setValue(scrolled);
}

QString LimitEffect::about(const Rule* rule, const HouseLimit* limit) const {
    QString html = head(ruleTitle(rule));
    if (!limit) return html;
    html += para(say(limit->spec.meaning).toHtmlEscaped());
    return html +
           quiet(tr("The rule book: %1. %2")
                     .arg(unitSaid(limitText(limit->spec.standard, limit->spec)),
                          say(limit->spec.basis))) +
           quiet(tr("In a bundle: %1").arg(plain(limit->key)));
}

Shift LimitEffect::shiftTo(const HouseLimit& limit, const std::optional<LimitValue>& value) const {
    Gym gym = draft_.gym().gym();
    if (value)
        gym.settings.limits[limit.key] = *value;
    else
        gym.settings.limits.erase(limit.key);
    return shiftBetween(draft_.verdict(), check(gym, *draft_.block(), {}, draft_.study()));
}

QString LimitEffect::moved(const HouseLimit& limit, const std::optional<LimitValue>& value,
                           const QString& title) const {
    const Shift shift = shiftTo(limit, value);
    QString html =
        head(title.arg(unitSaid(limitText(value.value_or(limit.spec.standard), limit.spec)),
                       monthName(*draft_.month())));
    if (shift.nothing()) return html + quiet(tr("Nothing changes in this month."));
    const auto number = [](double n) { return QString::number(n, 'g', 6); };
    html += shift.before == shift.after
                ? quiet(tr("Penalty %1, as it is.").arg(number(shift.before)))
                : para(tr("Penalty %1 → %2").arg(number(shift.before), number(shift.after)));
    return html + listed(tr("Would be found (%1)"), shift.appear) +
           listed(tr("Would go (%1)"), shift.go) + listed(tr("Would turn (%1)"), shift.turn);
}

QString LimitEffect::measured(const HouseLimit& limit) const {
    std::vector<Finding> found;
    for (const Finding& f : draft_.verdict().findings)
        if (f.rule + "." + f.limitName == limit.key) found.push_back(f);
    if (found.empty())
        return quiet(tr("In %1 nothing is found against it.").arg(monthName(*draft_.month())));
    return listed(tr("Found against it (%1)"), found);
}

QString LimitEffect::effect(const HouseLimit& limit,
                            const std::optional<std::optional<LimitValue>>& typed) const {
    if (!draft_.block())
        return quiet(tr("There is no month yet. With one, what a limit changes in it will "
                        "stand here."));
    if (typed) return moved(limit, *typed, tr("With %1, in %2"));
    const bool set = draft_.gym().gym().settings.limits.contains(limit.key);
    QString html = limit.weight ? QString() : measured(limit);
    if (set) html += moved(limit, std::nullopt, tr("With the rule book's %1, in %2"));
    return html;
}

void LimitEffect::changeEvent(QEvent* event) {
    QTextBrowser::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && rule_) draw(); // in other colours
}

} // namespace bw
