"""Random jobs over what the fields accept, in mixed units; the seed says which."""

import numpy

from tables import MOTORS
from units import ACRE, FOOT, GALLON, INCH, POUND, PSI, entry

LENGTH, SMALL, FLOW = ("ft", "m"), ("in", "mm"), ("gpm", "L/s", "m3/h")
DEVICES = [15, 20, 25, 30, 40, 50, 60, 70, 80, 90, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600, 800]


class Chance:
    def __init__(self, seed):
        self.of = numpy.random.default_rng(seed)

    def one(self, things):
        return things[int(self.of.integers(len(things)))]

    def even(self, low, high, units):
        return entry(float(self.of.uniform(low, high)), self.one(units))

    def spread(self, low, high, units):
        """Even over the orders of magnitude."""
        return entry(float(numpy.exp(self.of.uniform(numpy.log(low), numpy.log(high)))), self.one(units))

    def yes(self, share=0.5):
        return bool(self.of.random() < share)


def demand(c):
    gpm = GALLON / 60
    by = c.one(["flow", "flow", "land", "people_and_stock"])
    found = {"by": by}
    if by == "flow":
        return found | {"flow": c.spread(1 * gpm, 800 * gpm, FLOW)}
    found["hours"] = c.even(0.5 * 3600, 24 * 3600, ("h",))
    if by == "land":
        return found | {
            "area": c.spread(0.1 * ACRE, 40 * ACRE, ("acre", "ha")),
            "depth": c.even(0.05 * INCH, 0.4 * INCH, ("in/d", "mm/d")),
            "depth_of": c.one(["gross", "net"]),
            "application_efficiency": c.even(0.3, 1, ("1",)),
        }
    for many in ("people", "beef", "dairy", "horses"):
        found[many] = entry(float(c.of.integers(1, 60)), "1")
    for one in ("person", "beef", "dairy", "horse"):
        found[f"{one}_daily"] = c.even(1 * GALLON, 200 * GALLON, ("gal/d", "L/d"))
    return found


def well(c):
    found = {
        "drawdown_by": c.one(["measured", "specific_capacity", "aquifer"]),
        "water_temperature": c.even(0.5, 59.5, ("degF", "degC")),
    }
    gpm = GALLON / 60
    if found["drawdown_by"] == "specific_capacity":
        found["specific_capacity"] = c.spread(0.05 * gpm / FOOT, 500 * gpm / FOOT, ("gpm/ft", "L/(s m)"))
    if found["drawdown_by"] == "aquifer":
        found["transmissivity"] = c.spread(500 * GALLON / 86400 / FOOT, 1e6 * GALLON / 86400 / FOOT, ("gal/(d ft)", "m2/d"))
        found["storage"] = c.spread(1e-6, 0.4, ("1",))
        found["bore_diameter"] = c.even(2 * INCH, 60 * INCH, SMALL)
        found["pumping_time"] = c.spread(360, 1e4 * 3600, ("h",))
        found["loss"] = c.even(0, 1e-4 * FOOT / gpm**2, ("ft/gpm2", "s2/m5"))
    return found


def line(c):
    found = {"friction": c.one(["darcy_weisbach", "darcy_weisbach", "hazen_williams"])}
    for name in ("drop", "surface"):
        inside = float(numpy.exp(c.of.uniform(numpy.log(0.8 * INCH), numpy.log(8 * INCH))))
        found[f"{name}_inside"] = entry(inside, c.one(SMALL))
        found[f"{name}_roughness"] = entry(inside * float(c.of.choice([0, 1e-6, 1e-4, 1e-3, 0.01, 0.04])), c.one(SMALL))
        found[f"{name}_hazen_williams"] = c.even(60, 160, ("1",))
        found[f"{name}_fittings"] = c.even(0, 60, ("1",))
    found["surface_length"] = c.even(0, 3000 * FOOT, LENGTH)
    found["rise"] = c.even(-80 * FOOT, 300 * FOOT, LENGTH)
    found["pressure"] = c.even(0, 150 * PSI, ("psi", "kPa", "bar"))
    return found


def motor(c):
    power = c.one(list(MOTORS))
    found = {
        "kind": "submersible",
        "power": {"value": float(power), "unit": "hp"},
        "power_factor": c.even(0.6, 0.98, ("1",)),
        "efficiency": c.even(0.5, 0.98, ("1",)),
    }
    for volts, table in zip((230, 460), MOTORS[power]):
        if c.yes(0.6):
            found[f"nameplate_amps_{volts}"] = c.even(max(0.5, 0.9 * table), min(800, 1.25 * table), ("A",))
    return found


def job(c, number):
    setting = float(c.of.uniform(20, 2900)) * FOOT
    level = float(c.of.uniform(0, 0.9)) * setting
    site = {
        "pump_setting": entry(setting, c.one(LENGTH)),
        "static_level": entry(level, c.one(LENGTH)),
        "surface_run": c.even(0, 500 * FOOT, LENGTH),
        "ambient": c.even(-10, 58, ("degC", "degF")),
        "altitude": c.even(0, 3000, LENGTH),
    }
    water = well(c)
    if water["drawdown_by"] == "measured":
        site["drawdown"] = c.even(0, setting - level, LENGTH)
    metal = c.one(["copper", "copper", "copper", "aluminum"])
    return {
        "schema": 1,
        "name": f"Random job {number} (invented)",
        "note": "",
        "demo": True,
        "site": site,
        "demand": demand(c),
        "well": water,
        "line": line(c),
        "pump": {"efficiency": c.even(0.2, 0.9, ("1",))},
        "motor": motor(c),
        "cable": {
            "metal": metal,
            "build": c.one(["plastic_conduit", "steel_conduit"]),
            "insulation": c.one(["60 degC", "75 degC", "90 degC"]),
            "terminals_marked_75": c.yes(),
            "most_sets": int(c.one([1, 1, 1, 2, 3, 4])),
            "allowed_drop": c.even(0.005, 0.15, ("%",)),
            "device": entry(float(c.one(DEVICES)), "A"),
        },
        "supply": {
            "volts": entry(240.0, "V"),
            "distance": c.even(0, 400 * FOOT, LENGTH),
            "transformer": {"value": float(c.one([25, 50, 75, 100, 167])), "unit": "kVA"},
            "transformer_impedance": c.even(0.01, 0.08, ("%",)),
            "place": "indoors",
            "shaded": True,
        },
        "energy": {
            "price": c.even(0, 0.5, ("$/kWh",)),
            "discount": c.even(0, 0.3, ("%",)),
            "years": entry(float(c.of.integers(1, 51)), "yr"),
            "hours": c.even(0, 8760 * 3600, ("h",)),
        },
        "prices": {
            "source": "Invented prices",
            "cable_fixed": c.even(0, 5 / FOOT, ("$/ft", "$/m")),
            "cable_metal": c.even(0, 40 / POUND, ("$/lb", "$/kg")),
            "extra_equipment": c.even(-3000, 12000, ("$",)),
        },
    }


def jobs(seed, count):
    c = Chance(seed)
    return [job(c, number) for number in range(count)]
