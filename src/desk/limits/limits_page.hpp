// SPDX-License-Identifier: GPL-3.0-or-later
// All limits of the rule book as they are in this house, and what moving one would do to the month
// on show, while it is typed. Esc leads back.
#pragma once
#include "blockwright/model/message.hpp"

#include <QWidget>

class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace bw {

class Draft;
class LimitEffect;
class LimitsModel;
class LimitsTable;

class LimitsPage : public QWidget {
    Q_OBJECT
public:
    LimitsPage(Draft& draft, QWidget* parent); // the draft must outlive it
    ~LimitsPage() override;                    // what is being typed is stored

    void goTo(const QString& key); // "superset-work.seconds"; filters that hide it are taken off

Q_SIGNALS:
    void closed();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QWidget* makeHead();
    QWidget* makeSide();
    void wire();
    void choose();
    void draftChanged();
    void refresh();
    void showLine();
    void tryOut(const QModelIndex& index, const QString& text);
    void resetOne();
    void resetAll();
    void tell(const Message& what);
    void quiet();

    Draft& draft_;
    LimitsModel* model_;
    LimitsTable* table_;
    LimitEffect* effect_;
    QLineEdit* words_;
    QCheckBox *onlySet_, *weights_;
    QPushButton *one_, *all_;
    QLabel *notice_, *none_;
    bool stale_ = true; // the draft has changed since it was shown here
};

} // namespace bw
