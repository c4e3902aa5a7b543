"""Units in SI, each by its definition (NIST SP 811), and temperatures in degrees Celsius."""

FOOT = 0.3048
INCH = 0.0254
POUND = 0.45359237
GALLON = 231 * INCH**3
GRAVITY = 9.80665
PSI = POUND * GRAVITY / INCH**2
# 745.69987 W; the program counts with 745.7, as the trade does, which is 2e-7 more.
HORSEPOWER = 550 * POUND * GRAVITY * FOOT
ACRE = 43560 * FOOT**2

FACTORS = {
    "1": 1.0,
    "%": 0.01,
    "ft": FOOT,
    "m": 1.0,
    "in": INCH,
    "mm": 1e-3,
    "gpm": GALLON / 60,
    "L/s": 1e-3,
    "m3/h": 1 / 3600,
    "psi": PSI,
    "kPa": 1e3,
    "bar": 1e5,
    "hp": HORSEPOWER,
    "kW": 1e3,
    "W": 1.0,
    "A": 1.0,
    "V": 1.0,
    "h": 3600.0,
    "gpm/ft": GALLON / 60 / FOOT,
    "L/(s m)": 1e-3,
    "gal/(d ft)": GALLON / 86400 / FOOT,
    "m2/d": 1 / 86400,
    "ft/gpm2": FOOT / (GALLON / 60) ** 2,
    "s2/m5": 1.0,
    "acre": ACRE,
    "ha": 1e4,
    "in/d": INCH,
    "mm/d": 1e-3,
    "gal/d": GALLON,
    "L/d": 1e-3,
    "$/ft": 1 / FOOT,
    "$/m": 1.0,
    "$/lb": 1 / POUND,
    "$/kg": 1.0,
    "$": 1.0,
    "lb": POUND,
    "lb/ft": POUND / FOOT,
    "ft/s": FOOT,
    "gal": GALLON,
    "L": 1e-3,
    "yr": 1.0,
    "kWh": 1.0,
    "$/kWh": 1.0,
}


def si(entry):
    """An entry of a job, or a figure of an evaluation, in SI; temperatures in degrees Celsius."""
    value, unit = entry["value"], entry["unit"]
    if unit == "degF":
        return (value - 32) / 1.8
    if unit == "degC":
        return value
    return value * FACTORS[unit]


def entry(value, unit):
    """A value in SI as an entry in a unit."""
    if unit == "degF":
        return {"value": value * 1.8 + 32, "unit": unit}
    if unit == "degC":
        return {"value": value, "unit": unit}
    return {"value": value / FACTORS[unit], "unit": unit}
