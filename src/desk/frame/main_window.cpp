// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/main_window.hpp"

#include "desk/backups/gym_backups.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/command_panel.hpp"
#include "desk/frame/frame_style.hpp"
#include "desk/frame/help_actions.hpp"
#include "desk/frame/kept_view.hpp"
#include "desk/frame/menus.hpp"
#include "desk/frame/notice.hpp"
#include "desk/frame/prompts.hpp"
#include "desk/frame/remembered.hpp"
#include "desk/frame/resources.hpp"
#include "desk/frame/start_page.hpp"
#include "desk/frame/words.hpp"
#include "desk/frame/workspace.hpp"
#include "desk/handbook/handbook.hpp"

#include <QApplication>
#include <QCloseEvent>
#include <QMenuBar>
#include <QScreen>
#include <QStackedWidget>

#include <utility>

namespace bw {

namespace {
constexpr QSize kFirstSize{1360, 860};

QString gymFilter() { return MainWindow::tr("Gym files (*.bwgym);;All files (*)"); }

} // namespace

MainWindow::MainWindow()
    : stack_(new QStackedWidget(this)), start_(new StartPage(stack_)),
      backups_(new GymBackups(*this)), commands_(new CommandPanel(this)),
      theme_(Remembered::theme()), language_(Remembered::language()) {
    setWindowIcon(programIcon());
    stack_->addWidget(start_);
    setCentralWidget(stack_);
    wireStart();
    newActions();
    rebuildMenus();
    nameWindow();
    resize(kFirstSize);
    restoreGeometry(Remembered::geometry());
    const QSize room = screen()->availableSize();
    if (width() > room.width() || height() > room.height()) setWindowState(Qt::WindowMaximized);
}

MainWindow::~MainWindow() = default;

void MainWindow::wireStart() {
    connect(start_, &StartPage::demoWanted, this, &MainWindow::openDemo);
    connect(start_, &StartPage::emptyWanted, this, &MainWindow::startEmpty);
    connect(start_, &StartPage::bundleWanted, this, &MainWindow::startFromBundle);
    connect(start_, &StartPage::otherWanted, this, &MainWindow::askFile);
    connect(start_, &StartPage::backWanted, this, [this] {
        stack_->setCurrentWidget(workspace_);
        rebuildMenus();
    });
}

// The old ones may be in the middle of being triggered: they go later, but can't be triggered
// again.
void MainWindow::newActions() {
    if (actions_) {
        for (const auto& entry : actions_->all()) entry.action->setEnabled(false);
        menuBar()->clear();
        actions_->deleteLater();
    }
    actions_ = new Actions(this);
    const QString gym = tr("Gym");
    actions_->add(gym, QStringLiteral("new-gym"), tr("&New gym…"), {}, nullptr,
                  [this] { showStart(); });
    actions_->add(gym, QStringLiteral("open-gym"), tr("&Open a gym file…"), {Qt::CTRL | Qt::Key_O},
                  nullptr, [this] { askFile(); });
    backups_->addActions(*actions_);
    actions_->add(gym, QStringLiteral("quit"), tr("&Quit"), {Qt::CTRL | Qt::Key_Q}, nullptr,
                  [this] { close(); });
    addThemeActions(*actions_, theme_, [this](Theme theme) {
        Remembered::setTheme(theme);
        setTheme(theme);
    });
    addLanguageActions(*actions_, language_, [this](Language language) {
        Remembered::setLanguage(language);
        setLanguage(language);
    });
    addHelpActions(*actions_, this);
    actions_->add(tr("Help"), QStringLiteral("find-command"), tr("&Find a command…"), {Qt::Key_F3},
                  nullptr, [this] { findCommand(); });
}

void MainWindow::rebuildMenus() {
    buildMenus(*menuBar(), *actions_, stack_->currentWidget() == workspace_,
               [this](const QString& file) { openFile(pathOf(file)); });
}

void MainWindow::take(Opening opening, const std::filesystem::path& from) {
    if (!opening) return tell(opening.why(), from);
    leaveGym(); // and the right to write to its file
    newActions();
    workspace_ = new Workspace(std::move(opening).value(), *actions_, stack_);
    stack_->addWidget(workspace_);
    stack_->setCurrentWidget(workspace_);
    Remembered::opened(workspace_->gym().file().path());
    start_->offerBack({});
    rebuildMenus();
    if (const auto view = keptView(workspace_->gym().file().path())) workspace_->goBackTo(*view);
    connect(&workspace_->draft(), &Draft::changed, this, &MainWindow::nameWindow);
    nameWindow();
    workspace_->page()->setFocus();
}

// What is being typed is stored before its page goes.
std::unique_ptr<OpenGym> MainWindow::leaveGym() {
    if (!workspace_) return nullptr;
    if (QWidget* typing = QApplication::focusWidget(); workspace_->isAncestorOf(typing))
        typing->clearFocus();
    keepView();
    disconnect(&workspace_->draft(), nullptr, this, nullptr);
    auto gym = workspace_->letGo();
    delete std::exchange(workspace_, nullptr);
    return gym;
}

void MainWindow::closeGym() {
    leaveGym();
    newActions();
    showStart();
    nameWindow();
}

void MainWindow::tell(const Message& trouble, const std::filesystem::path& from) {
    const auto telling = [&](auto& where) {
        where.tell(trouble);
        if (GymBackups::worthALook(from))
            where.offer(tr("Look at its backups…"), [this, from] { backups_->show(from); });
    };
    if (workspace_ && stack_->currentWidget() == workspace_) return telling(workspace_->notice());
    telling(*start_);
}

void MainWindow::openFile(const std::filesystem::path& path) {
    if (workspace_ && sameFile(path, workspace_->gym().file().path())) {
        stack_->setCurrentWidget(workspace_);
        return rebuildMenus();
    }
    take(openGymFile(path), path);
}

void MainWindow::openDemo() {
    if (workspace_ && sameFile(demoPath(), workspace_->gym().file().path()))
        return openFile(demoPath());
    take(bw::openDemo(demoPath()), demoPath());
}

void MainWindow::showMonth(Month month) {
    if (!workspace_) return;
    if (workspace_->gym().gym().block(month)) return workspace_->draft().showMonth(month);
    workspace_->notice().tell({"This gym has no month %1.", {month.text()}});
}

void MainWindow::showStart() {
    start_->offerBack(workspace_ ? plain(workspace_->gym().gym().settings.name) : QString());
    stack_->setCurrentWidget(start_);
    rebuildMenus();
    start_->setFocus();
}

void MainWindow::findCommand() {
    QList<CommandLine> lines = commandLines(*actions_, *menuBar());
    if (stack_->currentWidget() == workspace_) lines += monthLines(workspace_->draft());
    commands_->open(lines);
}

void MainWindow::askFile() {
    if (const auto file = prompts().openFile(this, tr("Open a gym file"), gymFilter()))
        openFile(pathOf(*file));
}

std::optional<std::filesystem::path> MainWindow::placeForNew() {
    std::error_code ignored;
    if (!std::filesystem::exists(defaultGymPath(), ignored)) return defaultGymPath();
    const auto file = prompts().saveFile(this, tr("Where should the new gym file be?"),
                                         pathText(dataFolder() / "new.bwgym"), gymFilter());
    return file ? std::optional(pathOf(*file)) : std::nullopt;
}

void MainWindow::startEmpty(const QString& name) {
    if (const auto path = placeForNew()) take(createEmptyGym(*path, name));
}

void MainWindow::startFromBundle() {
    const auto bundle = prompts().openFile(this, tr("Bring in a bundle"),
                                           tr("Bundles (*.bundle.json *.json);;All files (*)"));
    if (!bundle) return;
    if (const auto path = placeForNew()) take(createFromBundle(*path, *bundle));
}

void MainWindow::setTheme(Theme theme) {
    theme_ = theme;
    applyTheme(*qApp, theme);
    if (QAction* chosen = actions_->find(themeActionId(theme))) chosen->setChecked(true);
}

void MainWindow::markLanguage(Language language) {
    language_ = language;
    if (QAction* chosen = actions_->find(languageActionId(language))) chosen->setChecked(true);
}

void MainWindow::setLanguage(Language language) {
    language_ = language;
    speak(language);
    const bool atStart = stack_->currentWidget() == start_;
    closeHandbook(*this);     // opened again it is in the other language
    commands_->deleteLater(); // which may be what ran this
    commands_ = new CommandPanel(this);
    start_->deleteLater();
    stack_->insertWidget(0, start_ = new StartPage(stack_));
    wireStart();
    if (workspace_) {
        take(leaveGym());
    } else {
        newActions();
        rebuildMenus();
        nameWindow();
    }
    if (atStart) showStart();
}

void MainWindow::nameWindow() {
    QString title = tr("Blockwright");
    if (workspace_) {
        const Draft& draft = workspace_->draft();
        const QString gym = plain(workspace_->gym().gym().settings.name);
        title = (draft.month() ? monthName(*draft.month()) + QStringLiteral(" · ") : QString()) +
                (gym.isEmpty() ? QString() : gym + QStringLiteral(" · ")) + title;
    }
    setWindowTitle(title);
}

// The desktop has other colours; those of the program are taken from them, if they are to be.
bool MainWindow::event(QEvent* event) {
    if (event->type() == QEvent::ThemeChange && theme_ != Theme::Light && theme_ != Theme::Dark)
        applyTheme(*qApp, theme_);
    return QMainWindow::event(event);
}

// Qt's own walk takes a page, whose focus is that of its sheet, for a stop of its own, so that Tab
// would go round between the sheet and the part before the page.
bool MainWindow::focusNextPrevChild(bool next) {
    QWidget* now = focusWidget() ? focusWidget() : this;
    const auto after = [next](QWidget* w) {
        return next ? w->nextInFocusChain() : w->previousInFocusChain();
    };
    for (QWidget* w = after(now); w != now; w = after(w)) {
        const bool stop = (w->focusPolicy() & Qt::TabFocus) != 0 && !w->focusProxy();
        if (!stop || !w->isEnabled() || !w->isVisible() || w->window() != this) continue;
        w->setFocus(next ? Qt::TabFocusReason : Qt::BacktabFocusReason);
        return true;
    }
    return false;
}

void MainWindow::keepView() {
    if (workspace_) bw::keepView(workspace_->gym().file().path(), workspace_->view());
}

void MainWindow::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange) dressAgain(this);
    QMainWindow::changeEvent(event);
}

void MainWindow::closeEvent(QCloseEvent* event) {
    Remembered::setGeometry(saveGeometry());
    keepView();
    QMainWindow::closeEvent(event);
}

} // namespace bw
