// SPDX-License-Identifier: GPL-3.0-or-later
// An exercise among its kin: easier ones on the left, harder ones on the right, swaps below. Enter
// or a click goes to one, Delete takes it out of the family, the dashed places add one by name.
#pragma once
#include "desk/shelf/family_node.hpp"

#include <QWidget>

namespace bw {

class ExerciseEditor;

class FamilyView : public QWidget {
    Q_OBJECT
public:
    FamilyView(OpenGym& gym, QWidget* parent);
    ~FamilyView() override;

    void show(std::optional<ExerciseId> id);
    [[nodiscard]] const std::vector<FamilyNode*>& nodes() const { return nodes_; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;

Q_SIGNALS:
    void wanted(const bw::ExerciseId& id);
    void refused(const bw::Message& why);
    void clear();
    void left(); // Esc

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    FamilyNode* make(FamilyNode::Who who);
    void addKinOf(const Exercise& e, Kin kin);
    [[nodiscard]] std::vector<FamilyNode*> nodesOf(std::optional<Kin> kin) const;
    // Puts the nodes in their places when asked to; gives the height they take.
    int layOut(int width, bool place) const;
    int stack(Kin kin, int left, int wide, int middle, bool place) const;
    void walk(FamilyNode* from, int dx, int dy);
    void take(FamilyNode* node);
    void remove(FamilyNode* node);
    void type(FamilyNode* node);
    void endTyping(bool enter);

    OpenGym& gym_;
    std::optional<ExerciseId> id_;
    FamilyNode* self_;
    std::vector<FamilyNode*> nodes_; // the exercise itself first; none without one
    ExerciseEditor* editor_ = nullptr;
    Kin typed_ = Kin::Easier;
};

} // namespace bw
