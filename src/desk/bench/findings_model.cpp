// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/findings_model.hpp"

#include "blockwright/rules/accepting.hpp"
#include "desk/bench/findings_words.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"

#include <QStringList>

#include <algorithm>

namespace bw {

namespace {
QString remediesSpoken(const FindingRow& row) {
    QStringList parts;
    for (const Remedy& remedy : row.finding.remedies)
        parts << (remedy.action ? FindingsModel::tr("Try: %1").arg(say(remedy.label))
                                : say(remedy.label));
    return parts.join(QStringLiteral(". "));
}

QString spoken(const FindingRow& row) {
    QStringList parts{levelWord(row.finding.level) + QStringLiteral(": ") + row.text,
                      row.where + QStringLiteral(", ") + row.weeks};
    if (row.accepted()) parts << FindingsModel::tr("Accepted: %1").arg(row.reason);
    for (const QString& part : {row.figures, row.basis, row.before, remediesSpoken(row)})
        if (!part.isEmpty()) parts << part;
    QString text;
    for (const QString& part : parts)
        text +=
            part + (part.endsWith(QLatin1Char('.')) ? QStringLiteral(" ") : QStringLiteral(". "));
    return text.trimmed();
}
} // namespace

FindingRow FindingRow::of(const Finding& f, const Block& block) {
    const Acceptance* before = acceptanceFor(block, f);
    return {f,
            say(f.text),
            findingWhere(block, f.place),
            findingWeeks(f.weeks, static_cast<int>(block.stair.size())),
            findingFigures(f),
            say(f.basis),
            Gauge::of(f),
            {},
            before ? acceptedBefore(*before, f) : QString()};
}

FindingRow FindingRow::of(const AcceptedFinding& accepted, const Block& block) {
    FindingRow row = of(accepted.finding, block);
    row.before.clear();
    row.reason = plain(accepted.reason);
    row.finding.remedies.clear(); // it may stay
    return row;
}

bool FindingRow::same(const FindingRow& o) const {
    return finding.place == o.finding.place && finding.rule == o.finding.rule &&
           finding.about == o.finding.about;
}

bool FindingRow::looksLike(const FindingRow& o) const {
    const auto labels = [](const Remedy& a, const Remedy& b) {
        return a.label == b.label && !a.action == !b.action;
    };
    return finding.level == o.finding.level && text == o.text && where == o.where &&
           weeks == o.weeks && figures == o.figures && basis == o.basis && gauge == o.gauge &&
           reason == o.reason && before == o.before &&
           std::equal(finding.remedies.begin(), finding.remedies.end(), o.finding.remedies.begin(),
                      o.finding.remedies.end(), labels);
}

const Remedy* FindingRow::action(int n) const {
    for (const Remedy& remedy : finding.remedies)
        if (remedy.action && n-- == 0) return &remedy;
    return nullptr;
}

int FindingRow::actions() const {
    return static_cast<int>(std::count_if(finding.remedies.begin(), finding.remedies.end(),
                                          [](const Remedy& r) { return bool(r.action); }));
}

namespace {
template <class Found> std::vector<FindingRow> rowsOf(const Found& found, const Block& block) {
    std::vector<FindingRow> rows;
    rows.reserve(found.size());
    for (const auto& one : found) rows.push_back(FindingRow::of(one, block));
    return rows;
}
} // namespace

void FindingsModel::show(const std::vector<Finding>& findings, const Block& block) {
    take(rowsOf(findings, block));
}
void FindingsModel::showAccepted(const std::vector<AcceptedFinding>& accepted, const Block& block) {
    take(rowsOf(accepted, block));
}

void FindingsModel::take(std::vector<FindingRow> next) {
    removeGone(next);
    for (std::size_t row = 0; row < next.size(); ++row) bring(row, std::move(next[row]));
    while (rows_.size() > next.size()) removeAt(rows_.size() - 1);
}

void FindingsModel::clear() {
    while (!rows_.empty()) removeAt(rows_.size() - 1);
}

void FindingsModel::removeGone(const std::vector<FindingRow>& next) {
    for (std::size_t row = rows_.size(); row-- > 0;)
        if (std::none_of(next.begin(), next.end(),
                         [&](const FindingRow& n) { return n.same(rows_[row]); }))
            removeAt(row);
}

void FindingsModel::removeAt(std::size_t row) {
    const int at = static_cast<int>(row);
    beginRemoveRows({}, at, at);
    rows_.erase(rows_.begin() + at);
    endRemoveRows();
}

// Makes `next` the given row: from further down, else as a new one.
void FindingsModel::bring(std::size_t row, FindingRow next) {
    const int to = static_cast<int>(row);
    const auto here = rows_.begin() + to;
    const auto found =
        std::find_if(here, rows_.end(), [&](const FindingRow& r) { return r.same(next); });
    if (found == rows_.end()) {
        beginInsertRows({}, to, to);
        rows_.insert(here, std::move(next));
        endInsertRows();
        return;
    }
    if (found != here) {
        const int from = static_cast<int>(found - rows_.begin());
        beginMoveRows({}, from, from, {}, to);
        std::rotate(here, found, found + 1);
        endMoveRows();
    }
    const bool alike = rows_[row].looksLike(next);
    rows_[row] = std::move(next); // always: its remedies act on what was judged last
    if (!alike) Q_EMIT dataChanged(index(to), index(to));
}

int FindingsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant FindingsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const FindingRow& row = at(index.row());
    switch (role) {
    case Qt::DisplayRole: return row.text;
    case Qt::ToolTipRole: return QString(row.text + QLatin1Char('\n') + row.basis);
    case Qt::AccessibleTextRole: return spoken(row);
    default: return {};
    }
}

} // namespace bw
