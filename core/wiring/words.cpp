#include "core/wiring/words.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>

namespace undercowl::wiring {
namespace {

struct WireWord {
    std::string_view word; // lowered, without accents
    std::string_view english;
};

// Written as they are looked up: see plain(). German ones without the endings of adjectives.
constexpr auto german = std::to_array<WireWord>({
    {"schwarz", "black"},
    {"braun", "brown"},
    {"rot", "red"},
    {"orangefarben", "orange"},
    {"gelb", "yellow"},
    {"grun", "green"},
    {"gruen", "green"},
    {"blau", "blue"},
    {"violett", "violet"},
    {"lila", "violet"},
    {"grau", "grey"},
    {"weiss", "white"},
    {"rosa", "pink"},
    {"turkis", "turquoise"},
    {"tuerkis", "turquoise"},
    {"hell", "light"},
    {"hellblau", "light blue"},
    {"hellgrun", "light green"},
    {"hellgruen", "light green"},
    {"mit", "with"},
    {"streifen", "tracer"},
    {"flachstecker", "blade"},
    {"flachsteckhulse", "receptacle"},
    {"rundstecker", "bullet"},
    {"rundsteckhulse", "bullet socket"},
    {"ringose", "ring"},
    {"gabelschuh", "fork"},
    {"stift", "pin"},
    {"buchse", "socket"},
    {"spleiss", "splice"},
    {"blank", "bare"},
});

constexpr auto others = std::to_array<WireWord>({
    {"gray", "grey"},          {"purple", "violet"}, // English, too
    {"noir", "black"},         {"noire", "black"},        {"noirs", "black"},
    {"noires", "black"},       {"marron", "brown"},       {"brun", "brown"},
    {"brune", "brown"},        {"rouge", "red"},          {"rouges", "red"},
    {"jaune", "yellow"},       {"jaunes", "yellow"},      {"vert", "green"},
    {"verte", "green"},        {"verts", "green"},        {"vertes", "green"},
    {"bleu", "blue"},          {"bleue", "blue"},         {"bleus", "blue"},
    {"bleues", "blue"},        {"violette", "violet"},    {"gris", "grey"},
    {"grise", "grey"},         {"grises", "grey"},        {"blanc", "white"},
    {"blanche", "white"},      {"blancs", "white"},       {"blanches", "white"},
    {"rose", "pink"},          {"clair", "light"},        {"claire", "light"},
    {"avec", "with"},          {"lisere", "tracer"},      {"oeillet", "ring"},
    {"fourche", "fork"},       {"broche", "pin"},         {"douille", "socket"},
    {"epissure", "splice"},    {"denude", "bare"}, // French
    {"nero", "black"},         {"nera", "black"},         {"neri", "black"},
    {"nere", "black"},         {"marrone", "brown"},      {"marroni", "brown"},
    {"rosso", "red"},          {"rossa", "red"},          {"rossi", "red"},
    {"rosse", "red"},          {"arancione", "orange"},   {"arancio", "orange"},
    {"giallo", "yellow"},      {"gialla", "yellow"},      {"gialli", "yellow"},
    {"gialle", "yellow"},      {"verde", "green"},        {"verdi", "green"},
    {"blu", "blue"},           {"azzurro", "light blue"}, {"azzurra", "light blue"},
    {"celeste", "light blue"}, {"viola", "violet"},       {"grigio", "grey"},
    {"grigia", "grey"},        {"grigi", "grey"},         {"bianco", "white"},
    {"bianca", "white"},       {"bianchi", "white"},      {"bianche", "white"},
    {"turchese", "turquoise"}, {"chiaro", "light"},       {"chiara", "light"},
    {"occhiello", "ring"},     {"forcella", "fork"},      {"spina", "pin"},
    {"presa", "socket"},       {"giunzione", "splice"},   {"nudo", "bare"}, // Italian
    {"negro", "black"},        {"negra", "black"},        {"negros", "black"},
    {"negras", "black"},       {"rojo", "red"},           {"roja", "red"},
    {"rojos", "red"},          {"rojas", "red"},          {"naranja", "orange"},
    {"amarillo", "yellow"},    {"amarilla", "yellow"},    {"amarillos", "yellow"},
    {"verdes", "green"},       {"azul", "blue"},          {"azules", "blue"},
    {"violeta", "violet"},     {"morado", "violet"},      {"morada", "violet"},
    {"blanco", "white"},       {"blanca", "white"},       {"blancos", "white"},
    {"turquesa", "turquoise"}, {"claro", "light"},        {"clara", "light"},
    {"con", "with"}, // Italian too
    {"trazo", "tracer"},       {"anillo", "ring"},        {"horquilla", "fork"},
    {"pasador", "pin"},        {"zocalo", "socket"},      {"empalme", "splice"},
    {"pelado", "bare"}, // Spanish
});

// Lowered, the accented letters of the four languages as the plain ones.
std::string plain(std::string_view word) {
    struct Accented {
        std::string_view utf8;
        std::string_view plain;
    };
    constexpr auto accented = std::to_array<Accented>({
        {"\u00e0", "a"},  {"\u00e1", "a"},  {"\u00e2", "a"},  {"\u00e4", "a"},  {"\u00e7", "c"},
        {"\u00e8", "e"},  {"\u00e9", "e"},  {"\u00ea", "e"},  {"\u00eb", "e"},  {"\u00ec", "i"},
        {"\u00ed", "i"},  {"\u00ee", "i"},  {"\u00ef", "i"},  {"\u00f1", "n"},  {"\u00f2", "o"},
        {"\u00f3", "o"},  {"\u00f4", "o"},  {"\u00f6", "o"},  {"\u00f9", "u"},  {"\u00fa", "u"},
        {"\u00fb", "u"},  {"\u00fc", "u"},  {"\u00c0", "a"},  {"\u00c4", "a"},  {"\u00c7", "c"},
        {"\u00c8", "e"},  {"\u00c9", "e"},  {"\u00d1", "n"},  {"\u00d6", "o"},  {"\u00dc", "u"},
        {"\u0153", "oe"}, {"\u0152", "oe"}, {"\u00df", "ss"}, {"\u1e9e", "ss"},
    });
    std::string small;
    while (!word.empty()) {
        const auto* const found =
            std::find_if(accented.begin(), accented.end(),
                         [word](const Accented& letter) { return word.starts_with(letter.utf8); });
        if (found != accented.end()) {
            small += found->plain;
            word.remove_prefix(found->utf8.size());
        } else {
            small += static_cast<char>(std::tolower(static_cast<unsigned char>(word.front())));
            word.remove_prefix(1);
        }
    }
    return small;
}

template<typename Words>
std::string_view among(const Words& words, std::string_view word) {
    const auto found =
        std::find_if(words.begin(), words.end(), [word](const WireWord& each) { return each.word == word; });
    return found == words.end() ? std::string_view{} : found->english;
}

} // namespace

std::string_view englishWireWord(std::string_view word) {
    const std::string small = plain(word);
    if (const auto english = among(others, small); !english.empty())
        return english;
    if (const auto english = among(german, small); !english.empty())
        return english;
    for (const std::string_view ending : {"e", "er", "es", "en", "em", "n"})
        if (small.size() > ending.size() + 2 && small.ends_with(ending))
            if (const auto english =
                    among(german, std::string_view(small).substr(0, small.size() - ending.size()));
                !english.empty())
                return english;
    return {};
}

} // namespace undercowl::wiring
