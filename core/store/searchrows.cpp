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
    std::string body = joined(
        {s.bag.empty() ? std::string{} : "bag " + s.bag, s.note, s.routing, s.ends, s.asFound, s.letOut});
    for (const job::Hardware& h : s.hardware) {
        body = joined({body, joined({h.what, h.thread, h.length, typed(h.torque)})}, "; ");
    }
    if (s.refitted) {
        body = joined({body, s.refitted->note}, "; ");
    }
    return {"step", s.id, {}, s.title, std::move(body)};
}

Line lineOf(const job::Part& p) {
    return {"part",
            p.id,
            {},
            joined({p.name, p.number}),
            joined({code(p.state), p.note, p.supplier, p.otherNumbers, p.fit})};
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

// What belongs to the job as a whole and has no kind of its own in the search: 'detail' says what it is.
Line lineOf(const job::Task& t) {
    return {"job", t.id, "task", t.title, t.waitingFor};
}

Line lineOf(const job::Approval& a) {
    return {"job", a.id, "approval", a.what, joined({a.by, a.how, typed(a.sum)})};
}

Line lineOf(const job::Recheck& r) {
    return {"job", r.id, "recheck", r.what, typed(r.after)};
}

Line lineOf(const job::ConsumableUse& c) {
    return {"job", c.id, "fluid", joined({c.what, c.grade}), joined({c.batch, c.opened})};
}

Line lineOf(const job::RoadTest& r) {
    return {"job", r.id, "road test", r.note, typed(r.distance)};
}

Line lineOf(const job::Round& r) {
    Line line{"job", r.id, "round", {}, {}};
    for (const job::RoundCheck& check : r.checks) {
        if (!check.note.empty()) {
            line.title = r.title;
            line.body = joined({line.body, joined({check.group, check.text, check.note})}, "; ");
        }
    }
    return line;
}

Line lineOf(const wiring::Gathering& g) {
    return {"wire", g.id, "connector", g.title, joined({g.latch, g.condition, g.treated}, "; ")};
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
        const std::string terminal = wiring::text(wire.terminal);
        rest = joined({rest, wire.din, terminal, terminal.empty() ? "" : "terminal", answer->source});
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
        if (const Line now = lineOf(gathering); all || now.body != lineOf(*old).body) {
            sink.put(TableId::SearchLine,
                     {stream, std::string(now.kind), now.subject, now.detail, now.title, now.body, machine});
        }
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
    std::string tried;
    for (const auto* list : {&job.functions, &job.functionsAfter}) {
        for (const job::FunctionCheck& check : *list) {
            if (!check.note.empty()) {
                tried = joined({tried, joined({check.what, check.note})}, "; ");
            }
        }
    }
    const job::HandedOver left = job.handedOver.value_or(job::HandedOver{});
    return {stream,
            std::string("job"),
            stream,
            std::string{},
            joined({job.number, job.reason}),
            joined({job.works, job.worksNot, job.load, job.received, tried, left.note, left.oldParts,
                    left.waste, state.around.owner},
                   "; "),
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
    putListChanges(stream, before.job.tasks, after.job.tasks, again, machine, sink);
    putListChanges(stream, before.job.approvals, after.job.approvals, again, machine, sink);
    putListChanges(stream, before.job.rechecks, after.job.rechecks, again, machine, sink);
    putListChanges(stream, before.job.consumables, after.job.consumables, again, machine, sink);
    putListChanges(stream, before.job.roadTests, after.job.roadTests, again, machine, sink);
    putListChanges(stream, before.job.rounds, after.job.rounds, again, machine, sink);
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
