// The list of the system's fonts, read beside everything else that a start needs.
#pragma once

#include <thread>

namespace undercowl::platform {

// Begins to read the list, which takes milliseconds, on a thread of its own. The end of this object waits for
// the thread. Nothing fails: without a list Qt reads it.
class EarlyFonts {
public:
    EarlyFonts();
    ~EarlyFonts();
    EarlyFonts(const EarlyFonts&) = delete;
    EarlyFonts& operator=(const EarlyFonts&) = delete;
    EarlyFonts(EarlyFonts&&) = delete;
    EarlyFonts& operator=(EarlyFonts&&) = delete;

    // Returns once the list is read. To be called before the first font is needed: who comes sooner reads the
    // whole list a second time, beside the thread. One thread calls it.
    void wait();

private:
    std::thread reading_;
};

} // namespace undercowl::platform
