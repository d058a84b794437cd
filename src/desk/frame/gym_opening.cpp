// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/gym_opening.hpp"

#include "desk/frame/resources.hpp"

#include <QFile>
#include <QFileInfo>

namespace bw {

namespace {
Message faultsOf(const QString& file, const std::vector<BundleFault>& faults) {
    constexpr std::size_t kTold = 4;
    std::string list;
    for (std::size_t i = 0; i < std::min(kTold, faults.size()); ++i)
        list += "\n" + (faults[i].pointer.empty() ? std::string("/") : faults[i].pointer) + ": " +
                faults[i].text.english();
    const std::string name = QFileInfo(file).fileName().toStdString();
    if (faults.size() <= kTold)
        return {"Nothing was taken from %1. Mend this in it first:%2", {name, list}};
    return {
        "Nothing was taken from %1. Mend this in it first:%2\nand %3 more; “bwright import” lists "
        "them all.",
        {name, list, std::to_string(faults.size() - kTold)}};
}

Gym shippedGround() {
    Gym gym;
    layOver(gym, shippedShelf());
    return gym;
}

Opening createWith(const std::filesystem::path& path, const Bundle& bundle) {
    return createGym(path, &bundle);
}
} // namespace

Opening openGymFile(const std::filesystem::path& path) {
    auto file = GymFile::open(path);
    if (!file) return file.why();
    return OpenGym::over(std::move(file).value());
}

Opening openDemo(const std::filesystem::path& path) {
    std::error_code ignored;
    if (std::filesystem::exists(path, ignored)) return openGymFile(path);
    return createFromBundle(path, demoBundleFile());
}

Opening createEmptyGym(const std::filesystem::path& path, const QString& name) {
    Bundle bundle;
    bundle.settings = GymSettings{};
    bundle.settings->name = name.trimmed().toStdString();
    return createWith(path, bundle);
}

Opening createFromBundle(const std::filesystem::path& path, const QString& bundleFile) {
    const Gym ground = shippedGround();
    const auto bundle = readBundleFile(bundleFile, &ground);
    if (!bundle) return bundle.why();
    return createWith(path, *bundle);
}

Result<Bundle> readBundleFile(const QString& file, const Gym* over) {
    QFile in(file);
    if (!in.open(QIODevice::ReadOnly))
        return Message{"%1 can't be read: %2.",
                       {file.toStdString(), in.errorString().toStdString()}};
    const QByteArray json = in.read(static_cast<qint64>(kMostBundleBytes) + 1);
    auto reading = readBundle({json.data(), static_cast<std::size_t>(json.size())}, over);
    if (!reading.bundle) return faultsOf(file, reading.errors);
    return std::move(*reading.bundle);
}

} // namespace bw
