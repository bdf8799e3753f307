import './guide/register.ts'
import './fit/register.ts'
