// SPDX-License-Identifier: GPL-3.0-or-later
// Gives a reader every file of the folders named, without a fuzzer. The last name printed is that
// of the file that ended it.
#include "law.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <vector>

namespace {
std::vector<std::filesystem::path> filesIn(const char* folder) {
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        if (entry.is_regular_file()) files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    return files;
}

void replay(const std::filesystem::path& file) {
    std::cout << file.filename().string() << std::endl;
    std::ifstream in(file, std::ios::binary);
    const std::vector<char> bytes{std::istreambuf_iterator<char>(in), {}};
    LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size());
}
} // namespace

int main(int argc, char* argv[]) {
    std::size_t replayed = 0;
    for (int i = 1; i < argc; ++i)
        for (const auto& file : filesIn(argv[i])) {
            replay(file);
            ++replayed;
        }
    return replayed == 0 ? 2 : 0; // a replay of nothing proves nothing
}
