// SPDX-License-Identifier: GPL-3.0-or-later
// Sheets: which one, on what paper, how it will look; print it or keep it as a PDF.
#pragma once
#include "desk/bench/draft.hpp"
#include "desk/sheets/sheet_preview.hpp"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QListWidget;
class QPushButton;

namespace bw {

enum class SheetKind;
struct SheetOptions;

class SheetsPage : public QWidget {
    Q_OBJECT
public:
    SheetsPage(Draft& draft, QWidget* parent); // the draft must outlive it

    void print();
    void savePdf();

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* makeColumn();
    void addChoices(QFormLayout* form);
    QWidget* makeButtons();
    void showChoices();
    void keepChoices();
    void draftChanged(); // a page out of sight is laid out when it is next shown
    void layOut();
    void report();
    void tell(const QString& what);
    [[nodiscard]] SheetKind kind() const;
    [[nodiscard]] SheetOptions options() const;

    Draft& draft_;
    Layout layout_;
    bool stale_ = true;
    QListWidget* sheets_ = nullptr;
    QComboBox* paper_ = nullptr;
    QComboBox* turned_ = nullptr;
    QCheckBox* blackAndWhite_ = nullptr;
    QCheckBox* largePrint_ = nullptr;
    QLabel* report_ = nullptr;
    QLabel* told_ = nullptr;
    QPushButton* print_ = nullptr;
    QPushButton* pdf_ = nullptr;
    SheetPreview* preview_ = nullptr;
};

} // namespace bw
