// A learned network: for every 40 ms, how likely each word of the grammar ends there.
//
// Class 0 is "nothing new", 1 to n the words in the order of the alphabet, n + 1 any word that the grammar
// does not have (connectionist temporal classification: A. Graves and others, 2006). Layers: a convolution,
// then separable ones with a way round each. Weights come from tests/platform/ear/train/learn.py.
#pragma once

#include "platform/ear/features.h"

#include <cstddef>
#include <span>
#include <vector>

namespace undercowl::platform {

// Natural logarithms of probabilities, by frame, then by class.
struct Likely {
    std::size_t frames{};
    std::size_t classes{};
    std::vector<float> logs;

    [[nodiscard]] float at(std::size_t frame, std::size_t which) const {
        return logs[frame * classes + which];
    }
};

class Network {
public:
    // Precondition: the bytes are what learn.py wrote. They are read, not kept.
    explicit Network(std::span<const unsigned char> bytes);

    [[nodiscard]] std::size_t classes() const { return classes_; }

    // Without frames for a sound that has none.
    [[nodiscard]] Likely listen(const Features& features) const;

private:
    struct Layer {
        std::vector<float> depth; // a filter for each channel
        std::vector<float> point; // from every channel to every channel
        std::vector<float> bias;
    };

    std::size_t channels_{};
    std::size_t kernel_{};
    std::size_t classes_{};
    std::vector<float> first_;
    std::vector<float> firstBias_;
    std::vector<Layer> layers_; // the first of them halves the frames
    std::vector<float> last_;
    std::vector<float> lastBias_;
};

} // namespace undercowl::platform
