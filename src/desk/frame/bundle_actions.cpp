// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/bundle_actions.hpp"

#include "desk/frame/actions.hpp"
#include "desk/frame/backing_up.hpp"
#include "desk/frame/gym_opening.hpp"
#include "desk/frame/notice.hpp"
#include "desk/frame/prompts.hpp"
#include "desk/frame/whole_file.hpp"
#include "desk/frame/work_line.hpp"

#include <QFileInfo>

namespace bw {

namespace {
QString bundleFilter() {
    return BundleActions::tr("Bundles (*.bundle.json *.json);;All files (*)");
}

// None: stopped.
Result<std::optional<std::vector<LiftResult>>> allResults(GymFile& file, WorkLine& work) {
    std::vector<LiftResult> results;
    WorkLine::Run run(work, BundleActions::tr("Reading results"), 0);
    bool whole = true;
    const auto read = file.eachResult([&](const LiftResult& result) {
        results.push_back(result);
        return whole = run.at(static_cast<int>(results.size()));
    });
    if (!read) return read.why();
    if (!whole) return std::optional<std::vector<LiftResult>>();
    return std::optional(std::move(results));
}

} // namespace

BundleActions::BundleActions(OpenGym& gym, Actions& actions, Notice& notice, WorkLine& work,
                             QWidget* window)
    : QObject(window), gym_(gym), notice_(notice), work_(work), window_(window) {
    auto* in = actions.add(tr("Gym"), QStringLiteral("bring-in"), tr("&Bring in a bundle…"), {},
                           nullptr, [this] { bringIn(); });
    in->setEnabled(gym.file().writable());
    Actions::explain(in, tr("read-only"));
    actions.add(tr("Gym"), QStringLiteral("write-bundle"), tr("&Write as a bundle…"), {}, nullptr,
                [this] { write(); });
}

void BundleActions::bringIn() {
    const auto file = prompts().openFile(window_, tr("Bring in a bundle"), bundleFilter());
    if (!file) return;
    const auto bundle = readBundleFile(*file, &gym_.gym());
    if (!notice_.hear(bundle)) return;
    const int chosen = prompts().choose(
        window_, tr("Bring in a bundle"),
        tr("%1 holds %n month(s), ", nullptr, static_cast<int>(bundle->blocks.size()))
                .arg(QFileInfo(*file).fileName()) +
            tr("%n exercise(s), ", nullptr, static_cast<int>(bundle->shelf.size())) +
            tr("%n member(s) ", nullptr, static_cast<int>(bundle->members.size())) +
            tr("and %n result(s).", nullptr, static_cast<int>(bundle->results.size())) +
            tr(" What has the same name or month here is replaced. This can't be undone, but a "
               "backup is made first."),
        {tr("Bring it in")});
    if (chosen != 0) return;
    const auto kept = backUpBefore(gym_.file(), BackupReason::Import);
    if (notice_.hear(importBundle(gym_, *bundle))) notice_.hear(kept);
}

void BundleActions::write() {
    const QString suggested =
        QFileInfo(QString::fromStdString(gym_.file().path().string())).completeBaseName() +
        QLatin1String(".bundle.json");
    const auto file =
        prompts().saveFile(window_, tr("Write as a bundle"), suggested, bundleFilter());
    if (!file) return;
    auto results = allResults(gym_.file(), work_);
    if (!notice_.hear(results) || !results.value()) return;
    notice_.hear(writeWhole(*file, writeBundle(bundleOf(gym_.gym(), *results.value()))));
}

} // namespace bw
