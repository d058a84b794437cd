// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/key_sheet.hpp"

#include "desk/frame/actions.hpp"

#include <QCoreApplication>
#include <QDialog>
#include <QHeaderView>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace bw {

namespace {
QString tr(const char* text) { return QCoreApplication::translate("keys", text); }

QStringList groupsOf(const Actions& actions) {
    QStringList groups;
    for (const auto& entry : actions.all())
        if (!groups.contains(entry.group)) groups << entry.group;
    return groups;
}
} // namespace

QStringList keysOf(const QAction& action) {
    QStringList keys;
    for (const QKeySequence& key : action.shortcuts())
        keys << key.toString(QKeySequence::NativeText);
    return keys;
}

QList<KeyLine> keyLines(const Actions& actions) {
    QList<KeyLine> lines;
    for (const QString& group : groupsOf(actions)) {
        QList<KeyLine> inGroup;
        for (const auto& entry : actions.all())
            if (entry.group == group && entry.action->isVisible() &&
                !entry.action->shortcuts().isEmpty())
                inGroup << KeyLine{entry.action->iconText(),
                                   keysOf(*entry.action).join(tr(" or "))};
        if (!inGroup.isEmpty()) lines << KeyLine{group, {}} << inGroup;
    }
    return lines;
}

void showKeySheet(const Actions& actions, QWidget* window) {
    auto* sheet = new QDialog(window);
    sheet->setAttribute(Qt::WA_DeleteOnClose);
    sheet->setWindowTitle(tr("Keys"));
    auto* table = new QTreeWidget(sheet);
    table->setAccessibleName(tr("Keys"));
    table->setHeaderLabels({tr("What"), tr("Keys")});
    table->setRootIsDecorated(false);
    for (const KeyLine& line : keyLines(actions)) {
        auto* item = new QTreeWidgetItem(table, {line.text, line.keys});
        if (!line.keys.isEmpty()) continue;
        QFont bold = table->font();
        bold.setBold(true);
        item->setFont(0, bold);
    }
    table->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    auto* layout = new QVBoxLayout(sheet);
    layout->addWidget(table);
    sheet->resize(560, 620);
    sheet->open();
}

} // namespace bw
