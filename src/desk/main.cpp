// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/run_desk.hpp"

int main(int argc, char* argv[]) { return bw::runDesk(argc, argv); }
