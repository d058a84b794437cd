// SPDX-License-Identifier: GPL-3.0-or-later
// A table of results before it is brought in: its first rows, what each column means, and what
// bringing it in would do. Nothing is stored before store().
#pragma once
#include "edit/result_verbs.hpp"

#include <QDialog>

class QComboBox;
class QLabel;
class QPlainTextEdit;
class QPushButton;
class QTableView;

namespace bw {

class ImportPreview;

class ImportDialog : public QDialog {
    Q_OBJECT
public:
    ImportDialog(OpenGym& gym, const QString& name, std::string text, QWidget* parent);
    [[nodiscard]] Result<bool> store(); // what accepting it promised
    [[nodiscard]] ImportPreview& preview() { return *preview_; }

private:
    void assemble(const QString& name);
    void addMeanings();
    void tryOut();
    void tell(const ResultsReading& read);
    [[nodiscard]] QString faultLines(const ResultsReading& read) const;

    OpenGym& gym_;
    std::string text_;
    ResultsChange change_;
    ImportPreview* preview_;
    QTableView* table_;
    std::vector<QComboBox*> meanings_; // by column
    QLabel *summary_, *undo_;
    QPlainTextEdit* faults_;
    QPushButton* bring_ = nullptr;
};

} // namespace bw
