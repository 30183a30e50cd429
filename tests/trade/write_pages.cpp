// write_calculation_pages DIR: one page for each calculation, and the list of them.
#include "core/trade/page.h"

#include <filesystem>
#include <fstream>
#include <iostream>

int main(int argc, char** argv) {
    if (argc != 2) {
        std::cerr << "usage: write_calculation_pages DIR\n";
        return 2;
    }
    const std::filesystem::path folder = argv[1];
    std::filesystem::create_directories(folder);
    std::ofstream(folder / "README.md") << undercowl::trade::indexPage();
    for (const auto& calculation : undercowl::trade::calculations())
        std::ofstream(folder / (calculation.declaration.name + ".md")) << undercowl::trade::page(calculation);
    return 0;
}
