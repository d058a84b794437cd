// SPDX-License-Identifier: GPL-3.0-or-later
// Sheets: which one, on what paper, how it will look; print it, keep it as a PDF, or keep all five.
#pragma once
#include "desk/sheets/sheet_maker.hpp"
#include "desk/sheets/sheet_preview.hpp"

#include <QWidget>

class QLabel;
class QListWidget;
class QPushButton;

namespace bw {

class SheetForm;
class WorkLine;

class SheetsPage : public QWidget {
    Q_OBJECT
public:
    SheetsPage(Draft& draft, WorkLine& work, QWidget* parent); // both must outlive it

    void print();
    void savePdf();
    void saveAll();

Q_SIGNALS:
    void boardWanted();

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* makeColumn();
    QWidget* makeButtons();
    QPushButton* makeButton(QWidget* row, const QString& text, void (SheetsPage::*what)());
    void showChoices();
    void keepChoices();
    void draftChanged(); // a page out of sight is laid out when it is next shown
    void layOut();
    void report();
    void tell(const QString& what);
    // False when it was stopped or failed, which is told.
    [[nodiscard]] bool keepAllIn(const QString& folder);
    [[nodiscard]] SheetKind kind() const;
    [[nodiscard]] SheetOptions options() const;

    Draft& draft_;
    WorkLine& work_;
    SheetMaker maker_;
    Layout layout_;
    bool stale_ = true;
    QListWidget* sheets_ = nullptr;
    SheetForm* form_ = nullptr;
    QLabel* report_ = nullptr;
    QLabel* told_ = nullptr;
    std::vector<QPushButton*> buttons_;
    SheetPreview* preview_ = nullptr;
};

} // namespace bw
