// SPDX-License-Identifier: GPL-3.0-or-later
// The window: either the start page or one open gym. It only assembles; what is done is done by
// those who are assembled.
#pragma once
#include "blockwright/model/calendar.hpp"
#include "desk/frame/gym_opening.hpp"
#include "desk/frame/language.hpp"
#include "desk/frame/theme.hpp"

#include <QMainWindow>

#include <filesystem>
#include <optional>

class QStackedWidget;

namespace bw {

class Actions;
class CommandPanel;
class GymBackups;
class StartPage;
class Workspace;

class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    MainWindow();
    ~MainWindow() override;

    // Shows the gym, or says why there is none, on the start page or above the page; what was open
    // stays open then. `from`: the file whose backups may be the way back.
    void take(Opening opening, const std::filesystem::path& from = {});
    void closeGym(); // its file is free for others afterwards
    void openFile(const std::filesystem::path& path);
    void openDemo();
    void showMonth(Month month); // says so when the gym has no such month
    void showStart();
    void setTheme(Theme theme);
    // All is made anew in that language; what can be undone stays so.
    void setLanguage(Language language);
    void markLanguage(Language language); // in the menu, for one that is spoken already

    [[nodiscard]] Workspace* workspace() { return workspace_; } // null: no gym is open
    [[nodiscard]] StartPage& startPage() { return *start_; }
    [[nodiscard]] Actions& actions() { return *actions_; }

protected:
    bool event(QEvent* event) override;
    bool focusNextPrevChild(bool next) override;
    void changeEvent(QEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

private:
    std::unique_ptr<OpenGym> leaveGym(); // null: none was open
    void wireStart();
    void newActions();
    void rebuildMenus();
    void tell(const Message& trouble, const std::filesystem::path& from);
    void findCommand();
    void askFile();
    void startEmpty(const QString& name);
    void startFromBundle();
    [[nodiscard]] std::optional<std::filesystem::path> placeForNew();
    void nameWindow();
    void keepView();

    QStackedWidget* stack_;
    StartPage* start_;
    GymBackups* backups_;
    Actions* actions_ = nullptr;
    Workspace* workspace_ = nullptr;
    CommandPanel* commands_; // over all else
    Theme theme_ = Theme::System;
    Language language_ = Language::System;
};

} // namespace bw
