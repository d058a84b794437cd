// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/command_lines.hpp"

#include "desk/bench/draft.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/key_sheet.hpp"
#include "desk/frame/words.hpp"

#include <QCoreApplication>
#include <QMenu>
#include <QMenuBar>
#include <QPointer>
#include <QRegularExpression>
#include <QSet>

#include <algorithm>
#include <map>
#include <tuple>
#include <vector>

namespace bw {

namespace {
QString tr(const char* text) { return QCoreApplication::translate("commands", text); }

void gather(const QList<QAction*>& actions, QSet<const QAction*>& found) {
    for (const QAction* action : actions) {
        found.insert(action);
        if (const QMenu* menu = action->menu()) gather(menu->actions(), found);
    }
}

// The action that leads to the page in which the widget is; null: it is in none.
const QAction* leadingTo(const Actions& actions, const QWidget* widget) {
    for (const auto& entry : actions.all()) {
        const auto* page = entry.action->data().value<QWidget*>();
        if (page && (page == widget || page->isAncestorOf(widget))) return entry.action;
    }
    return nullptr;
}

QString elsewhere(const Actions& actions, const QWidget* scope) {
    const QAction* place = leadingTo(actions, scope);
    if (!place) return {};
    if (place->isChecked()) return tr("the gym has no month yet");
    return tr("first go to %1, %2").arg(place->iconText(), keysOf(*place).value(0));
}

CommandLine lineOf(const Actions& actions, const Actions::Entry& entry, bool inMenu) {
    QAction* action = entry.action;
    CommandLine line{entry.group, action->iconText(), keysOf(*action), true, {}, {}};
    line.run = [action = QPointer<QAction>(action)] {
        if (action) action->trigger();
    };
    const bool seen = !entry.scope || entry.scope->isVisible();
    line.atHand = inMenu && seen && action->isEnabled() && action->isVisible();
    if (!line.atHand)
        line.whyNot = !inMenu ? tr("no gym is on show")
                      : !seen ? elsewhere(actions, entry.scope)
                              : Actions::whyNot(*action);
    return line;
}

// Lower case without accents.
QString bare(const QString& text) {
    QString out;
    for (const QChar c : text.normalized(QString::NormalizationForm_KD))
        if (c.category() != QChar::Mark_NonSpacing) out += c;
    return out.toCaseFolded();
}

QStringList wordsOf(const QString& text) {
    static const QRegularExpression between(QStringLiteral("[^\\p{L}\\p{N}+]+"));
    return bare(text).split(between, Qt::SkipEmptyParts);
}

bool beginAmong(const QStringList& typed, const QStringList& words) {
    return std::all_of(typed.begin(), typed.end(), [&](const QString& t) {
        return std::any_of(words.begin(), words.end(),
                           [&](const QString& w) { return w.startsWith(t); });
    });
}

constexpr int kFar = 3; // not found
int farness(const CommandLine& line, const QStringList& typed) {
    QStringList words = wordsOf(line.text);
    if (beginAmong(typed, words)) return words.value(0).startsWith(typed.value(0)) ? 0 : 1;
    words += wordsOf(line.group);
    for (const QString& key : line.keys) words << bare(key);
    return beginAmong(typed, words) ? 2 : kFar;
}
} // namespace

QList<CommandLine> commandLines(const Actions& actions, const QMenuBar& bar) {
    QSet<const QAction*> inMenus;
    gather(bar.actions(), inMenus);
    QList<CommandLine> lines;
    for (const auto& entry : actions.all())
        lines << lineOf(actions, entry, inMenus.contains(entry.action));
    return lines;
}

QList<CommandLine> monthLines(Draft& draft) {
    QList<CommandLine> lines;
    for (const auto& [month, block] : draft.gym().gym().blocks) {
        QString text = monthName(month);
        if (!block->title.empty()) text += QStringLiteral(" · ") + plain(block->title);
        lines.prepend(
            {tr("Months"), text, {}, true, {}, [&draft, m = month] { draft.showMonth(m); }});
    }
    return lines;
}

QList<CommandLine> linesFor(const QList<CommandLine>& all, const QString& typed) {
    struct Found {
        int farness;
        qsizetype at;
    };
    const QStringList words = wordsOf(typed);
    std::map<QString, std::pair<int, qsizetype>> groups; // how far, first line
    std::vector<Found> found;
    for (qsizetype i = 0; i < all.size(); ++i) {
        const int far = words.isEmpty() ? 0 : farness(all[i], words);
        auto& group = groups.try_emplace(all[i].group, kFar, i).first->second;
        group.first = std::min(group.first, far);
        if (far < kFar) found.push_back({far, i});
    }
    const auto order = [&](const Found& f) {
        const auto& [far, first] = groups.at(all[f.at].group);
        return std::tuple(far, first, f.farness, f.at);
    };
    std::sort(found.begin(), found.end(),
              [&](const Found& a, const Found& b) { return order(a) < order(b); });
    QList<CommandLine> lines;
    for (const Found& f : found) lines << all[f.at];
    return lines;
}

} // namespace bw
