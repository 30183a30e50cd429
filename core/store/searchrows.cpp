#include "core/store/searchrows.h"

#include <initializer_list>

namespace undercowl::store {
namespace {

struct Line {
    std::string_view kind;
    Id subject;
    std::string detail; // tells lines of one subject apart
    std::string title;
    std::string body;
};

std::string joined(std::initializer_list<std::string_view> words, std::string_view between = " ") {
    std::string text;
    for (const std::string_view word : words) {
        if (!word.empty()) {
            text += text.empty() ? "" : between;
            text += word;
        }
    }
    return text;
}

std::string typed(const std::optional<job::TypedValue>& value) {
    return value ? value->digits + " " + value->unit : std::string{};
}

Line lineOf(const job::Photo& p) {
    return {"photo", p.id, {}, p.note, p.note.empty() ? std::string{} : std::string(code(p.purpose))};
}

Line lineOf(const job::Finding& f) {
    return {"finding", f.id, {}, f.text, joined({f.toDo, code(f.severity), f.settledHow})};
}

Line lineOf(const job::StripStep& s) {
    std::string body = joined({s.bag.empty() ? std::string{} : "bag " + s.bag, s.note});
    for (const job::Hardware& h : s.hardware) {
        body = joined({body, joined({h.what, h.thread, h.length, typed(h.torque)})}, "; ");
    }
    if (s.refitted) {
        body = joined({body, s.refitted->note}, "; ");
    }
    return {"step", s.id, {}, s.title, std::move(body)};
}

Line lineOf(const job::Part& p) {
    return {"part", p.id, {}, joined({p.name, p.number}), joined({code(p.state), p.note})};
}

Line lineOf(const job::Reading& r) {
    return {"reading",
            r.id,
            {},
            r.what,
            joined({r.value.digits, r.value.unit, r.verdict, r.instrument, r.limitSource})};
}

Line lineOf(const job::Memo& m) {
    return {"memo", m.id, {}, m.text, {}};
}

Line lineOf(const wiring::Gathering& gathering, const wiring::Place& place) {
    std::string wires;
    std::string rest = joined({place.tag});
    for (const auto& answer : place.answers) {
        if (!answer) {
            continue;
        }
        const wiring::Wire& wire = answer->wire;
        const std::string colour = joined({code(wire.colour), englishWords(wire.colour), wire.function});
        if (wires.find(colour) == std::string::npos) {
            wires = joined({wires, colour}, "; ");
        }
        rest = joined({rest, wire.din, wiring::text(wire.terminal), answer->source});
    }
    const std::string where = joined({code(place.key.half), std::to_string(place.key.number),
                                      place.key.slot > 1 ? std::to_string(place.key.slot) : std::string{}});
    return {"wire", gathering.id, where, wires, joined({gathering.title, ", ", where, rest})};
}

template<typename Item>
bool putIfSaid(const Id& stream, const Item& item, const std::string& machine, RowSink& sink) {
    Line line = lineOf(item);
    if (line.title.empty() && line.body.empty()) {
        return false;
    }
    sink.put(TableId::SearchLine, {stream, std::string(line.kind), line.subject, line.detail,
                                   std::move(line.title), std::move(line.body), machine});
    return true;
}

template<typename Item>
const Item* counterpart(const std::vector<Item>& in, const Item& item, std::size_t near) {
    if (near < in.size() && in[near].id == item.id) {
        return &in[near];
    }
    for (const Item& other : in) {
        if (other.id == item.id) {
            return &other;
        }
    }
    return nullptr;
}

// An item without a word to be found by has no line.
template<typename Item>
void putListChanges(const Id& stream, const std::vector<Item>& before, const std::vector<Item>& after,
                    bool again, const std::string& machine, RowSink& sink) {
    const auto drop = [&](const Item& item) {
        const Line line = lineOf(item);
        sink.drop(TableId::SearchLine, {stream, std::string(line.kind), line.subject});
    };
    for (std::size_t i = 0; i < after.size(); ++i) {
        const Item* old = counterpart(before, after[i], i);
        if ((old == nullptr || again || !(*old == after[i])) && !putIfSaid(stream, after[i], machine, sink) &&
            old != nullptr) {
            drop(after[i]);
        }
    }
    for (std::size_t i = 0; i < before.size(); ++i) {
        if (counterpart(after, before[i], i) == nullptr) {
            drop(before[i]);
        }
    }
}

void putWires(const Id& stream, const std::vector<wiring::Gathering>& before,
              const std::vector<wiring::Gathering>& after, bool again, const std::string& machine,
              RowSink& sink) {
    const auto put = [&](const wiring::Gathering& gathering, const wiring::Place& place) {
        Line line = lineOf(gathering, place);
        sink.put(TableId::SearchLine, {stream, std::string(line.kind), line.subject, line.detail,
                                       std::move(line.title), std::move(line.body), machine});
    };
    for (std::size_t i = 0; i < after.size(); ++i) {
        const wiring::Gathering& gathering = after[i];
        const wiring::Gathering* old = counterpart(before, gathering, i);
        const bool all = again || old == nullptr || old->title != gathering.title;
        for (const wiring::Place& place : gathering.held) {
            const wiring::Place* was = old != nullptr ? old->find(place.key) : nullptr;
            if (all || was == nullptr || !(*was == place)) {
                put(gathering, place);
            }
        }
        for (const wiring::Place& place : old != nullptr ? old->held : std::vector<wiring::Place>{}) {
            if (gathering.find(place.key) == nullptr) {
                const Line line = lineOf(*old, place);
                sink.drop(TableId::SearchLine, {stream, std::string(line.kind), line.subject, line.detail});
            }
        }
    }
    for (std::size_t i = 0; i < before.size(); ++i) {
        if (counterpart(after, before[i], i) == nullptr) {
            sink.drop(TableId::SearchLine, {stream, std::string("wire"), before[i].id});
        }
    }
}

Row jobRow(const Id& stream, const JobState& state) {
    const job::Job& job = state.job;
    return {stream,
            std::string("job"),
            stream,
            std::string{},
            joined({job.number, job.reason}),
            joined({job.works, job.worksNot, job.load, state.around.owner}, "; "),
            state.around.machine};
}

} // namespace

void putSearchChanges(const Id& stream, const JobState& before, const JobState& after, RowSink& sink) {
    const std::string& machine = after.around.machine;
    const bool again = before.around.machine != machine;
    const bool was = !before.job.opened.entry.empty();
    if (after.job.opened.entry.empty()) {
        sink.drop(TableId::SearchLine, {stream, std::string("job")});
    } else if (Row now = jobRow(stream, after); !was || now != jobRow(stream, before)) {
        sink.put(TableId::SearchLine, std::move(now));
    }
    putListChanges(stream, before.job.photos, after.job.photos, again, machine, sink);
    putListChanges(stream, before.job.findings, after.job.findings, again, machine, sink);
    putListChanges(stream, before.job.steps, after.job.steps, again, machine, sink);
    putListChanges(stream, before.job.parts, after.job.parts, again, machine, sink);
    putListChanges(stream, before.job.readings, after.job.readings, again, machine, sink);
    putListChanges(stream, before.job.memos, after.job.memos, again, machine, sink);
    putWires(stream, before.job.gatherings, after.job.gatherings, again, machine, sink);
}

void putMachineSearch(const job::Machine& m, RowSink& sink) {
    sink.put(TableId::SearchLine, {m.id, std::string("machine"), m.id, std::string{},
                                   joined({label(m), m.frameNumber}), m.notes, label(m)});
}

void putOwnerSearch(const job::Owner& o, RowSink& sink) {
    sink.put(TableId::SearchLine, {o.id, std::string("owner"), o.id, std::string{}, o.name,
                                   joined({o.phone, o.mail, o.address}), std::string{}});
}

} // namespace undercowl::store
