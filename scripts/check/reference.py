"""Answers questions with outside libraries, for the check to compare with.

Standard input is a JSON list of questions, standard output the list of answers
in the same order:

    {"ask": "pint", "from": "1 inch", "to": "meter"}            -> number
    {"ask": "uncertainties", "of": "m * g", "with": {"m": [0.05, 0.0001]}}
                                                                -> [value, standard uncertainty]

Only the libraries that the questions name are loaded.
"""

import json
import math
import sys


def with_pint(questions):
    import pint

    registry = pint.UnitRegistry(autoconvert_offset_to_baseunit=True)  # 1 degC is a temperature
    return [float(registry.parse_expression(q["from"]).to(q["to"]).magnitude) for q in questions]


def with_uncertainties(questions):
    import uncertainties

    answers = []
    for q in questions:
        names = {name: uncertainties.ufloat(*value) for name, value in q["with"].items()}
        got = eval(q["of"], {"__builtins__": {}, "pi": math.pi}, names)
        answers.append([got.nominal_value, got.std_dev])
    return answers


def main():
    questions = json.load(sys.stdin)
    answers = [None] * len(questions)
    for name, answer in [("pint", with_pint), ("uncertainties", with_uncertainties)]:
        places = [i for i, q in enumerate(questions) if q["ask"] == name]
        if places:
            for i, a in zip(places, answer([questions[i] for i in places])):
                answers[i] = a
    json.dump(answers, sys.stdout)


main()
