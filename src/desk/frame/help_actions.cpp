// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/help_actions.hpp"

#include "desk/frame/actions.hpp"
#include "desk/frame/key_sheet.hpp"
#include "desk/frame/prompts.hpp"
#include "desk/handbook/handbook.hpp"

#include <QClipboard>
#include <QCoreApplication>
#include <QGuiApplication>
#include <QSysInfo>
#include <QWidget>

namespace bw {

namespace {
QString tr(const char* text) { return QCoreApplication::translate("help", text); }

void about(QWidget* window) {
    const QString text = tr("Blockwright drafts a month of small-group strength classes, checks it "
                            "by computing, and "
                            "prints its sheets.\n\n") +
                         versionBlock() +
                         tr("\n\nFree software under the GNU General Public License, version 3 or "
                            "later. It comes with "
                            "no warranty.\n\n") +
                         cautions();
    const int chosen = prompts().choose(window, tr("About Blockwright"), text,
                                        {tr("Close"), tr("Copy the version")});
    if (chosen == 1) QGuiApplication::clipboard()->setText(versionBlock());
}
} // namespace

QString versionBlock() {
    return QStringLiteral("Blockwright %1\nQt %2 (%3)\n%4, %5")
        .arg(QLatin1String(BLOCKWRIGHT_VERSION), QLatin1String(qVersion()),
             QGuiApplication::platformName(), QSysInfo::prettyProductName(),
             QSysInfo::currentCpuArchitecture());
}

QString cautions() {
    return tr(
        "Exercise can hurt people. Members are screened before they start. Stop on pain, "
        "dizziness, chest discomfort or unusual breathlessness. Medical questions go to a "
        "licensed professional. Local codes and the gym's own emergency plan come first. "
        "Blockwright never diagnoses and never clears a member: a flag only makes it look for "
        "another exercise, and a licensed professional decides.");
}

void addHelpActions(Actions& actions, QWidget* window) {
    const QString group = tr("Help");
    actions.add(group, QStringLiteral("handbook"), tr("&Handbook"), {Qt::Key_F1}, nullptr,
                [window] { openHandbook(window, handbookPlaceFor(window->focusWidget())); });
    actions.add(group, QStringLiteral("first-month"), tr("First &month in ten minutes"), {},
                nullptr, [window] { openHandbook(window, QStringLiteral("first-month.md")); });
    actions.add(group, QStringLiteral("keys"), tr("&Keys"), {Qt::SHIFT | Qt::Key_F1}, nullptr,
                [&actions, window] { showKeySheet(actions, window); });
    actions.add(group, QStringLiteral("cautions"), tr("&Cautions"), {}, nullptr,
                [window] { prompts().tell(window, tr("Cautions"), cautions()); });
    actions.add(group, QStringLiteral("about"), tr("&About Blockwright"), {}, nullptr,
                [window] { about(window); });
}

} // namespace bw
