// SPDX-License-Identifier: GPL-3.0-or-later
// The one registry of everything that can be done by menu, button or key. The shortcut sheet is
// made from it, so a key that is not here does not exist.
#pragma once
#include <QAction>
#include <QKeySequence>
#include <QList>
#include <QObject>

#include <functional>
#include <vector>

class QWidget;

namespace bw {

class Actions : public QObject {
    Q_OBJECT
public:
    explicit Actions(QObject* parent = nullptr) : QObject(parent) {}

    struct Entry {
        QString group; // a heading of the shortcut sheet: "Bench", "Month", "Everywhere"
        QAction* action;
        QWidget* scope; // where it acts, when that is not the whole window
    };
    // The action belongs to the registry; `scope` is the widget within which its keys work (with
    // its children); null: the whole window.
    QAction* add(const QString& group, const QString& id, const QString& text,
                 const QList<QKeySequence>& keys, QWidget* scope, std::function<void()> run);
    [[nodiscard]] QAction* find(const QString& id) const; // null when there is none
    // Why it can't be done, for whoever looks for it while it is off: "there is nothing to undo".
    static void explain(QAction* action, const QString& whyNot);
    [[nodiscard]] static QString whyNot(const QAction& action);
    [[nodiscard]] const std::vector<Entry>& all() const { return entries_; }

private:
    std::vector<Entry> entries_;
};

} // namespace bw
