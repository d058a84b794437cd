// SPDX-License-Identifier: GPL-3.0-or-later
// One member: the trend of an exercise, how strong that makes them, the next step, and what their
// flags change in the session. Reads when it is shown, and only what it shows.
#pragma once
#include "desk/ledger/member_story.hpp"

#include <QScrollArea>

class QComboBox;
class QLabel;
class QPushButton;

namespace bw {

class TrendChart;

class MemberPanel : public QScrollArea {
    Q_OBJECT
public:
    explicit MemberPanel(GymFile& file, QWidget* parent);

    // None: no member to show; `empty` says what to do then.
    void show(std::optional<StoryAsk> ask, const QString& empty);
    [[nodiscard]] const MemberStory* story() const { return story_ ? &*story_ : nullptr; }

Q_SIGNALS:
    void editWanted();
    void refused(const bw::Message& why);

private:
    void assemble();
    QLabel* words(const char* name);
    void read();
    void fill();
    void fillExercises();
    void fillFlags();

    GymFile& file_;
    std::optional<StoryAsk> ask_;
    std::optional<MemberStory> story_;
    QWidget* inside_ = nullptr;
    QLabel *name_ = nullptr, *empty_ = nullptr, *day_ = nullptr, *estimate_ = nullptr,
           *next_ = nullptr, *flags_ = nullptr;
    QComboBox* exercise_ = nullptr;
    TrendChart* trend_ = nullptr;
    QPushButton* edit_ = nullptr;
};

} // namespace bw
