// Catch2's main lives in a file of its own: it takes longest to compile and never changes.
#define CATCH_CONFIG_MAIN
#include <catch2/catch.hpp>
