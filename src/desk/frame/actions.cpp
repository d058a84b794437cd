// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/actions.hpp"

#include <QWidget>

namespace bw {

namespace {
constexpr const char* kWhyNot = "whyNot";
}

QAction* Actions::add(const QString& group, const QString& id, const QString& text,
                      const QList<QKeySequence>& keys, QWidget* scope, std::function<void()> run) {
    auto* action = new QAction(text, this);
    action->setObjectName(id);
    action->setShortcuts(keys);
    action->setShortcutContext(scope ? Qt::WidgetWithChildrenShortcut : Qt::WindowShortcut);
    if (scope) scope->addAction(action);
    connect(action, &QAction::triggered, this, [run = std::move(run)] { run(); });
    entries_.push_back({group, action, scope});
    return action;
}

void Actions::explain(QAction* action, const QString& whyNot) {
    action->setProperty(kWhyNot, whyNot);
}
QString Actions::whyNot(const QAction& action) { return action.property(kWhyNot).toString(); }

QAction* Actions::find(const QString& id) const {
    for (const Entry& e : entries_)
        if (e.action->objectName() == id) return e.action;
    return nullptr;
}

} // namespace bw
