# The cells of a CSV file on standard input, as lists of texts.
import csv
import io
import json
import sys

text = sys.stdin.buffer.read().decode('utf-8')
delimiter = sys.argv[1]
print(json.dumps(list(csv.reader(io.StringIO(text, newline=''), delimiter=delimiter, strict=True))))
