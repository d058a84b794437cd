// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/menus.hpp"

#include "desk/frame/actions.hpp"
#include "desk/frame/remembered.hpp"

#include <QActionGroup>
#include <QCoreApplication>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>

namespace bw {

namespace {
QString tr(const char* text) { return QCoreApplication::translate("menus", text); }

// "-" is a line between; what the registry does not have is left out.
void add(QMenu& menu, const Actions& actions, const QList<const char*>& ids) {
    for (const char* id : ids) {
        if (QLatin1String(id) == QLatin1String("-"))
            menu.addSeparator();
        else if (QAction* action = actions.find(QLatin1String(id)))
            menu.addAction(action);
    }
}

void addGroup(QMenu& menu, const Actions& actions, const QString& group) {
    for (const auto& entry : actions.all())
        if (entry.group == group) menu.addAction(entry.action);
}

void addRecent(QMenu& menu, const std::function<void(const QString&)>& open) {
    QMenu* recent = menu.addMenu(tr("Open &recent"));
    recent->setEnabled(!Remembered::recent().isEmpty());
    QObject::connect(&menu, &QMenu::aboutToShow, recent, [recent, open] {
        recent->clear(); // a file may have gone since
        const QStringList files = Remembered::recent();
        recent->setEnabled(!files.isEmpty());
        for (const QString& file : files)
            recent->addAction(QString(file).replace(QLatin1Char('&'), QLatin1String("&&")),
                              [open, file] { open(file); });
    });
}

void addGymMenu(QMenuBar& bar, const Actions& actions, bool gym,
                const std::function<void(const QString&)>& openRecent) {
    QMenu* menu = bar.addMenu(tr("&Gym"));
    add(*menu, actions, {"new-gym", "open-gym"});
    addRecent(*menu, openRecent);
    if (gym)
        add(*menu, actions,
            {"-", "gym-and-kit", "house-limits", "-", "bring-in", "write-bundle", "-", "save-copy",
             "backups", "-", "print", "save-pdf", "save-all-pdf"});
    add(*menu, actions, {"-", "quit"});
}
} // namespace

void buildMenus(QMenuBar& bar, const Actions& actions, bool gym,
                const std::function<void(const QString&)>& openRecent) {
    bar.clear();
    for (QMenu* old : bar.findChildren<QMenu*>(QString(), Qt::FindDirectChildrenOnly))
        old->deleteLater(); // one of them may be open
    addGymMenu(bar, actions, gym, openRecent);
    if (gym) {
        QMenu* edit = bar.addMenu(tr("&Edit"));
        add(*edit, actions, {"undo", "redo", "-"});
        addGroup(*edit, actions, QCoreApplication::translate("bw::BenchPage", "Bench"));
        add(*edit, actions,
            {"-", "propose", "propose-slot", "propose-section", "propose-month", "-"});
        const QString stair = QCoreApplication::translate("bw::StairView", "Stair");
        addGroup(*edit->addMenu(stair), actions, stair);
        const QString shelf = QCoreApplication::translate("bw::ShelfPage", "Shelf");
        addGroup(*edit->addMenu(shelf), actions, shelf);
        const QString ledger = QCoreApplication::translate("bw::LedgerActions", "Ledger");
        addGroup(*edit->addMenu(ledger), actions, ledger);
        add(*bar.addMenu(tr("&Month")), actions,
            {"start-next", "start-empty", "copy-last", "copy-shown", "-", "previous-month",
             "next-month", "-", "remove-month"});
    }
    QMenu* view = bar.addMenu(tr("&View"));
    if (gym) {
        addGroup(*view, actions, QCoreApplication::translate("bw::Workspace", "Places"));
        add(*view, actions,
            {"-", "week-1", "week-2", "week-3", "week-4", "week-5", "week-6", "-", "next-finding",
             "previous-finding", "go-findings", "go-beam", "-", "board", "-"});
    }
    add(*view, actions, {"theme-system", "theme-light", "theme-dark", "theme-contrast", "-"});
    add(*view->addMenu(tr("&Language")), actions,
        {"language-system", "language-en", "language-de"});
    add(*bar.addMenu(tr("&Help")), actions,
        {"handbook", "first-month", "-", "find-command", "keys", "-", "cautions", "-", "about"});
}

QString themeActionId(Theme theme) {
    switch (theme) {
    case Theme::System: return QStringLiteral("theme-system");
    case Theme::Light: return QStringLiteral("theme-light");
    case Theme::Dark: return QStringLiteral("theme-dark");
    case Theme::Contrast: return QStringLiteral("theme-contrast");
    }
    return {};
}

QString languageActionId(Language language) {
    return QLatin1String("language-") + languageWord(language);
}

// A language is called by its own name.
void addLanguageActions(Actions& actions, Language now, const std::function<void(Language)>& set) {
    auto* group = new QActionGroup(&actions);
    const std::pair<Language, QString> languages[] = {
        {Language::System, tr("Language of the s&ystem")},
        {Language::English, QStringLiteral("&English")},
        {Language::German, QStringLiteral("De&utsch")}};
    for (const auto& [language, text] : languages) {
        QAction* action = actions.add(tr("View"), languageActionId(language), text, {}, nullptr,
                                      [set, language = language] { set(language); });
        action->setCheckable(true);
        action->setChecked(language == now);
        group->addAction(action);
    }
}

void addThemeActions(Actions& actions, Theme now, const std::function<void(Theme)>& set) {
    auto* group = new QActionGroup(&actions);
    const std::pair<Theme, QString> themes[] = {{Theme::System, tr("Colours of the &system")},
                                                {Theme::Light, tr("&Light colours")},
                                                {Theme::Dark, tr("&Dark colours")},
                                                {Theme::Contrast, tr("High &contrast")}};
    for (const auto& [theme, text] : themes) {
        QAction* action = actions.add(tr("View"), themeActionId(theme), text, {}, nullptr,
                                      [set, theme = theme] { set(theme); });
        action->setCheckable(true);
        action->setChecked(theme == now);
        group->addAction(action);
    }
}

} // namespace bw
